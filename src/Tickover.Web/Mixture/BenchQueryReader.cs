using System.Globalization;

namespace Tickover.Web.Mixture;

/// <summary>Reads the state out of an address; says everything that is wrong with it at once.</summary>
public static class BenchQueryReader
{
    // No petrol engine with carburettors turns outside this; the map itself is narrower and says so by its flags.
    private const double SlowestRpm = 100;
    private const double FastestRpm = 20_000;

    // A plate lies at rest at 0° from seated and along the barrel at 90°.
    private const double WidestDegrees = 90;
    private const int MostBarrels = 64;
    private const int MostChanges = 12;
    private const int LongestValue = 40;

    /// <summary>Reads a query.</summary>
    /// <param name="query">The query of a request.</param>
    /// <returns>The state, and what is wrong; the state holds the default for what is.</returns>
    public static (BenchQuery Query, IReadOnlyList<string> Problems) Read(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        var problems = new List<string>();
        var read = new BenchQuery
        {
            Barrel = (int)(Number(query, "barrel", 1, MostBarrels, "a whole number from 1", problems, whole: true) ?? 1),
            Rpm = Number(query, "rpm", SlowestRpm, FastestRpm, "100 to 20,000 rpm", problems),
            Throttle = Number(query, "throttle", 0, WidestDegrees, "0 to 90 degrees from the seated plate", problems),
            Show = Shown(query["show"], problems),
            Part = Short(query["part"]),
            Value = Short(query["value"]),
            OneBarrel = query["for"] == "one",
            Also = [.. query["also"].Take(MostChanges).Select(Change).OfType<TrialChange>()],
        };
        return (read, problems);
    }

    /// <summary>Reads a number as people type it, with a decimal point or a decimal comma.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The number, or null where it is none or not finite.</returns>
    public static double? Number(string? text) =>
        double.TryParse(text?.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : null;

    private static double? Number(
        IQueryCollection query, string name, double low, double high, string allowed, List<string> problems, bool whole = false)
    {
        var text = query[name].ToString();
        if (text.Length == 0)
        {
            return null;
        }

        if (Number(text) is { } value && value >= low && value <= high && (!whole || value == Math.Floor(value)))
        {
            return value;
        }

        problems.Add($"{name}: \"{Short(text)}\" cannot be used. Give {allowed}.");
        return null;
    }

    private static MapShown Shown(string? text, List<string> problems)
    {
        if (string.IsNullOrEmpty(text))
        {
            return MapShown.Fitted;
        }

        if (Enum.TryParse<MapShown>(text, ignoreCase: true, out var shown) && Enum.IsDefined(shown))
        {
            return shown;
        }

        problems.Add($"show: \"{Short(text)}\" is not a map. Give fitted, trial or difference.");
        return MapShown.Fitted;
    }

    private static TrialChange? Change(string? text) =>
        text?.Split(':', 2) is [{ Length: > 0 } part, { Length: > 0 } value] ? new TrialChange(Short(part)!, Short(value)!) : null;

    private static string? Short(string? text) => string.IsNullOrWhiteSpace(text)
        ? null
        : text.Length > LongestValue ? text[..LongestValue] : text;
}
