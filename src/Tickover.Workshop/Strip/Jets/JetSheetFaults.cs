using System.Globalization;
using Tickover.Physics.Fuels;

namespace Tickover.Workshop.Strip.Jets;

/// <summary>What is wrong with a sheet of jets, where, and what to do.</summary>
internal static class JetSheetFaults
{
    /// <summary>Length of a bore over its diameter where none is written.</summary>
    public const double UsualLength = 3;

    private const double MostWide = 10;                     // mm
    private const double MostFlow = 300;                    // ml/s

    /// <summary>All that is wrong.</summary>
    /// <param name="w">The sheet as written.</param>
    /// <returns>The faults; none where it can be used.</returns>
    public static IEnumerable<string> Of(WrittenJets w)
    {
        if (w.Jets is not { Count: > 0 } jets)
        {
            return ["jets: at least one, each with \"part\", \"where\" and what was measured."];
        }

        var isTimed = jets.Any(j => j?.Time is not null);
        return [.. isTimed ? [.. Liquid(w), .. Figures(w), .. Words(w)] : Words(w), .. jets.SelectMany((j, i) => Jet(w, j, Line($"jets[{i}]")))];
    }

    /// <summary>Whether the liquid is water.</summary>
    /// <param name="liquid">As written.</param>
    /// <returns>True where it is.</returns>
    public static bool IsWater(string? liquid) => string.Equals(liquid?.Trim(), "water", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> Liquid(WrittenJets w)
    {
        if (string.IsNullOrWhiteSpace(w.Liquid))
        {
            yield return "liquid: which liquid was on the bench? Water and petrol give other bores. Write \"water\", \"E5\", \"E10\" or a pure liquid.";
        }
        else if (!IsWater(w.Liquid) && !FuelGrade.TryParse(w.Liquid, out _))
        {
            yield return $"liquid: \"{w.Liquid}\" is not known here. There are \"water\", {FuelGrade.Allowed}.";
        }
    }

    private static IEnumerable<string> Figures(WrittenJets w) =>
        from figure in new (string Name, double? Value, double Low, double High, string Unit)[]
        {
            ("temperature", w.Temperature, -10, 60, "°C"), ("head", w.Head, 20, 5000, "mm"), ("headAtEnd", w.HeadAtEnd ?? w.Head, 20, 5000, "mm"),
            ("length", w.Length ?? UsualLength, 0.5, 15, "times the bore"), ("stampHead", w.StampHead ?? w.Head, 20, 20000, "mm"),
        }
        where !(figure.Value >= figure.Low && figure.Value <= figure.High)
        select Line($"{figure.Name}: {(figure.Value is { } value ? Line($"{value} {figure.Unit}") : "missing")}; it is from {figure.Low} to {figure.High} {figure.Unit}.");

    private static IEnumerable<string> Words(WrittenJets w)
    {
        if (w.HeadAtEnd > w.Head)
        {
            yield return "headAtEnd: the head cannot rise while the jet runs. Were the two changed round?";
        }

        if (w.Numbering is not (null or "bore" or "flow"))
        {
            yield return "numbering: \"bore\" where stamps are hundredths of a millimetre, \"flow\" where they are ml a minute.";
        }
    }

    private static IEnumerable<string> Jet(WrittenJets w, WrittenJet? jet, string at)
    {
        if (jet is null || string.IsNullOrWhiteSpace(jet.Part) || string.IsNullOrWhiteSpace(jet.Where))
        {
            return [$"{at}: \"part\", such as \"main jet\", and \"where\", such as \"barrel 3\"."];
        }

        return [.. Pin(jet, at), .. jet.Time is { } time ? Run(time, jet.Volume ?? w.Volume, at) : []];
    }

    private static IEnumerable<string> Pin(WrittenJet jet, string at) => jet.Pin is { } pin && !(pin > 0.05 && pin < MostWide)
        ? [Line($"{at}.pin: {pin} mm is no bore of a jet. Write the largest gauge that goes in, mm, such as 1.35.")]
        : [];

    private static IEnumerable<string> Run(double seconds, double? millilitres, string at) =>
        !(seconds > 1 && seconds < 7200) ? [Line($"{at}.time: {seconds} s; a run takes from 1 s to two hours. Time it again with more in the vessel.")]
        : !(millilitres is > 0 and < 20000) ? [$"{at}.volume: how many ml ran through in that time."]
        : millilitres / seconds > MostFlow ? [Line($"{at}: {millilitres} ml in {seconds} s is more than any jet passes. Check volume and time.")]
        : [];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
