namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What wear does, in words.</summary>
public static class WearWords
{
    private const double Percent = 100;
    private const double Trimmed = 0.05;                    // as good as hands and meters are at idle (trade report 2.4)
    private const double EasilyEvened = 0.5;                // kg/h between two barrels that need no by-pass (trade report 2.4, common practice)

    /// <summary>What was measured, as a word.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The word.</returns>
    public static string Name(WearKind kind) => kind switch
    {
        WearKind.Spindle => "spindle",
        WearKind.Light => "plate",
        WearKind.Angle => "angle of the plate",
        WearKind.Bore => "bore",
        WearKind.Flange => "flange",
        WearKind.Needle => "needle valve",
        WearKind.Pump => "pump shot",
        WearKind.Tube => "emulsion tube",
        _ => "throttle stop",
    };

    /// <summary>How bad it is, as a word.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The word.</returns>
    public static string Name(WearGrade grade) => grade switch
    {
        WearGrade.Good => "good",
        WearGrade.Usable => "usable",
        WearGrade.Worn => "worn",
        _ => "must not stay",
    };

    /// <summary>A barrel in a sentence or two.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="leak">Air the plate cannot shut off: kg/h, as a part of idle air, and the degrees left to the plate.</param>
    /// <param name="tightDegrees">Degrees of a plate without leaks.</param>
    /// <param name="overTightest">Leaks more than the tightest barrel of the same carburettor, kg/h.</param>
    /// <returns>The words.</returns>
    internal static string Barrel(WearSheet sheet, (double Air, double Share, double? Degrees) leak, double? tightDegrees, double overTightest)
    {
        var takes = SheetText.Line($"{leak.Air:0.00} kg/h goes past the shut plate, {Percent * leak.Share:0.#} % of its idle air");
        var at = leak.Degrees is { } left && tightDegrees is { } tight ? SheetText.Line($"; its plate is left {left:0.00}° off its seat where a tight one stands {tight:0.00}°") : "";
        var does = leak.Share >= 1 ? $"{takes}: it cannot be shut down to idle. Mend that first."
            : leak.Share <= Trimmed ? $"{takes}: trimmed out with the screws."
            : $"{takes}{at}. Behind the idle outlet nothing has measured that air: leaner by as much until the mixture screw gives it back, and the plate's edge stands lower by the progression holes.";
        return $"{does}{Bypass(sheet.Limits.BypassKgh, overTightest)}";
    }

    private static string Bypass(double limit, double over) => over <= EasilyEvened ? ""
        : over <= limit ? SheetText.Line($" It leaks {over:0.0} kg/h more than its neighbour on the same spindle: the neighbour's by-pass evens that out.")
        : SheetText.Line($" It leaks {over:0.0} kg/h more than its neighbour on the same spindle: the by-pass has no travel left for that ({limit:0.#} kg/h, common practice).");
}
