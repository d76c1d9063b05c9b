using System.Globalization;
using Tickover.Physics.Fuels;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Jets;

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
    public static IEnumerable<Fault> Of(WrittenJets w)
    {
        if (w.Jets is not { Count: > 0 } jets)
        {
            return [new Fault("jets", "No jet is written", "at least one, each with \"part\", \"where\" and what was measured", "Write what was measured of each jet.")];
        }

        var isTimed = jets.Any(j => j?.Time is not null);
        return [.. isTimed ? [.. Liquid(w), .. Figures(w), .. Words(w)] : Words(w), .. jets.SelectMany((j, i) => Jet(w, j, Line($"jets[{i}]")))];
    }

    /// <summary>Whether the liquid is water.</summary>
    /// <param name="liquid">As written.</param>
    /// <returns>True where it is.</returns>
    public static bool IsWater(string? liquid) => string.Equals(liquid?.Trim(), "water", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Fault> Liquid(WrittenJets w)
    {
        var allowed = $"\"water\", {FuelGrade.Allowed}";
        return string.IsNullOrWhiteSpace(w.Liquid) ? [new Fault("liquid", "Which liquid was on the bench is not said", allowed, "Say it: water and petrol give other bores.")]
            : !IsWater(w.Liquid) && !FuelGrade.TryParse(w.Liquid, out _) ? [new Fault("liquid", $"\"{w.Liquid}\" is not known here", allowed, "Write one of these.")]
            : [];
    }

    private static IEnumerable<Fault> Figures(WrittenJets w) =>
        from figure in new (string Name, double? Value, double Low, double High, string Unit)[]
        {
            ("temperature", w.Temperature, -10, 60, "°C"), ("head", w.Head, 20, 5000, "mm"), ("headAtEnd", w.HeadAtEnd ?? w.Head, 20, 5000, "mm"),
            ("length", w.Length ?? UsualLength, 0.5, 15, "times the bore"), ("stampHead", w.StampHead ?? w.Head, 20, 20000, "mm"),
        }
        where !(figure.Value >= figure.Low && figure.Value <= figure.High)
        select new Fault(figure.Name, figure.Value is { } value ? Line($"{value} {figure.Unit}") : "It is missing", Line($"{figure.Low} to {figure.High} {figure.Unit}"), "Read it on the bench again.");

    private static IEnumerable<Fault> Words(WrittenJets w)
    {
        if (w.HeadAtEnd > w.Head)
        {
            yield return new Fault("headAtEnd", "The head cannot rise while the jet runs", "no more than the head", "See whether the two were changed round.");
        }

        if (w.Numbering is not (null or "bore" or "flow"))
        {
            yield return new Fault("numbering", $"\"{w.Numbering}\" is no way of numbering", "\"bore\" for hundredths of a millimetre, \"flow\" for ml a minute", "Write one of the two.");
        }
    }

    private static IEnumerable<Fault> Jet(WrittenJets w, WrittenJet? jet, string at) =>
        jet is null || string.IsNullOrWhiteSpace(jet.Part) || string.IsNullOrWhiteSpace(jet.Where)
            ? [new Fault(at, "It does not say what it is or where it sat", "\"part\", such as \"main jet\", and \"where\", such as \"barrel 3\"", "Write both.")]
            : [.. Pin(jet, at), .. jet.Time is { } time ? Run(time, jet.Volume ?? w.Volume, at) : []];

    private static IEnumerable<Fault> Pin(WrittenJet jet, string at) => jet.Pin is { } pin && !(pin > 0.05 && pin < MostWide)
        ? [new Fault($"{at}.pin", Line($"{pin} mm is no bore of a jet"), Line($"0.05 to {MostWide} mm"), "Write the largest gauge that goes in, mm, such as 1.35.")]
        : [];

    private static IEnumerable<Fault> Run(double seconds, double? millilitres, string at) =>
        !(seconds > 1 && seconds < 7200) ? [new Fault($"{at}.time", Line($"{seconds} s"), "1 s to two hours", "Time it again with more in the vessel.")]
        : !(millilitres is > 0 and < 20000) ? [new Fault($"{at}.volume", "It is missing or no volume", "up to 20,000 ml", "Write how many ml ran through in that time.")]
        : millilitres / seconds > MostFlow ? [new Fault(at, Line($"{millilitres} ml in {seconds} s is more than any jet passes"), Line($"up to {MostFlow} ml/s"), "Check volume and time.")]
        : [];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
