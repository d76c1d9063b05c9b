namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What is found of float levels, in words.</summary>
internal static class LevelWords
{
    private const double Percent = 100;

    /// <summary>The set in a line.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="verdicts">Each carburettor.</param>
    /// <param name="spread">Highest from lowest, mm.</param>
    /// <returns>A sentence.</returns>
    public static string Verdict(LevelSheet sheet, IReadOnlyList<LevelVerdict> verdicts, double? spread)
    {
        var floods = verdicts.Where(v => v.Finding == LevelFinding.Floods).ToList();
        var off = verdicts.Where(v => v.Finding is LevelFinding.High or LevelFinding.Low).ToList();
        var limit = SheetText.Line($"{sheet.Limit:0.##} mm{(sheet.Limit == LevelUsual.Limit ? ", common practice" : "")}");
        return (floods.Count, off.Count) switch
        {
            ( > 0, _) => $"The {Names(floods)} floods at the pressures named.",
            (_, > 0) => SheetText.Line($"Levels are not equal: the {Names(off)} {(off.Count == 1 ? "stands" : "stand")} outside ({limit}). Highest from lowest: {spread ?? Math.Abs(off[0].Off ?? 0):0.0} mm."),
            _ when verdicts.Any(v => v.Finding == LevelFinding.Doubtful) => $"Levels may differ by more than they should ({limit}): the readings cannot decide. Take the wet level with a sight tube.",
            _ when verdicts.Any(v => v.IsMassOff) => $"Levels are equal, but the floats are not: the {Names(verdicts.Where(v => v.IsMassOff))} weighs otherwise.",
            _ => spread is { } s ? SheetText.Line($"Levels are equal: {s:0.0} mm from highest to lowest ({limit}).") : "The level is as wanted.",
        };
    }

    /// <summary>One carburettor.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="v">What was found.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Of(LevelSheet sheet, LevelVerdict v) => [.. Level(sheet, v), .. Float(sheet, v), .. Pressure(sheet, v)];

    private static IEnumerable<string> Level(LevelSheet sheet, LevelVerdict v)
    {
        if (v.Off is not { } off)
        {
            yield return SheetText.Line($"At {sheet.Pressure:0.#} kPa the fuel stands above the spill: set the float lower, or bring the pressure down.");
            yield break;
        }

        if (v.Finding == LevelFinding.Equal)
        {
            yield break;
        }

        var high = off > 0;
        yield return SheetText.Line($"The fuel stands {Math.Abs(off):0.0} mm too {(high ? "high" : "low")}{(v.Finding == LevelFinding.Doubtful ? SheetText.Line($" (good to ±{v.OwnBand:0.0} mm: measure once more)") : "")}: bend the tang by {Math.Abs(v.Tang):0.00} mm at the needle, so that the float shuts it {(high ? "lower" : "higher")}, which is {Math.Abs(off):0.0} mm at the float.");
        if (v.FuelPart is { } part)
        {
            yield return SheetText.Line($"Until then {Math.Abs(Percent * part):0.#} % {(part > 0 ? "more" : "less")} fuel just where the main circuit begins ({sheet.Signal:0} Pa), and hardly any difference flat out.");
        }
    }

    private static IEnumerable<string> Float(LevelSheet sheet, LevelVerdict v)
    {
        if (v.IsMassOff)
        {
            yield return SheetText.Line($"Its float is {Math.Abs(v.MassOff):0.0} g {(v.MassOff > 0 ? "heavier than" : "lighter than")} the middle of the set (limit {sheet.MassLimit:0.##} g{(sheet.MassLimit == LevelUsual.MassLimit ? ", common practice" : "")}): {(v.MassOff > 0 ? "shake it for fuel inside, look for bubbles in warm water, no flame." : "see whether it is the same part.")}");
        }

        if (v.WetOverDry is { } wet && v.Computed is { } computed && Math.Abs(wet) > computed.PlusMinus + LevelUsual.SightTube)
        {
            yield return SheetText.Line($"The wet level is {Math.Abs(wet):0.0} mm {(wet > 0 ? "higher" : "lower")} than the dry height gives: {(wet > 0 ? "the needle seeps, the float is heavier than weighed, or the height was taken from another datum." : "the float sticks or the height was taken from another datum, such as with the needle's spring pressed in.")} The wet level counts.");
        }
    }

    private static IEnumerable<string> Pressure(LevelSheet sheet, LevelVerdict v)
    {
        if (v.Off is not null && v.RiseAtDeadHead is null)
        {
            yield return SheetText.Line($"With nothing taken out and {sheet.DeadHead:0.#} kPa at the needle it spills: from {v.Flooding:0} kPa on. Lower the pressure, or fit a smaller seat.");
        }
    }

    private static string Names(IEnumerable<LevelVerdict> verdicts) => string.Join(" and the ", verdicts.Select(v => v.Float.Where));
}
