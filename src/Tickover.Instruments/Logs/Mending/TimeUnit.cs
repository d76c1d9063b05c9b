namespace Tickover.Instruments.Logs.Mending;

/// <summary>Finds the unit of a time column by its steps.</summary>
internal static class TimeUnit
{
    private const double ShortestStep = 0.0004;          // s: 2 500 rows a second, more than any logger here writes
    private const double LongestStep = 20;               // s: slower rows show no stretch of anything
    private const int StepsSeen = 20_000;
    private static readonly string[] InOrder = ["s", "ms", "µs", "d", "min", "h"];

    /// <summary>The unit.</summary>
    /// <param name="times">Times as the file has them.</param>
    /// <param name="told">The column, and its unit where the heading or a person gave one.</param>
    /// <returns>The column with its unit.</returns>
    public static ColumnChoice Find(ReadOnlySpan<double> times, ColumnChoice told)
    {
        var step = Step(times);
        if (told.Unit is { } unit && (told.Sureness is HowSure.Told || Fits(step, unit) || unit.Form is UnitForm.Clock))
        {
            return told;
        }

        var found = InOrder.Select(n => LogUnits.Find(LogQuantity.Time, n)!).Where(u => step * u.Scale >= 0.004).FirstOrDefault(u => Fits(step, u))
            ?? InOrder.Select(n => LogUnits.Find(LogQuantity.Time, n)!).FirstOrDefault(u => Fits(step, u))
            ?? LogUnits.Find(LogQuantity.Time, "s")!;
        var why = FormattableString.Invariant($"; steps of {step:0.######} make {found.Name}");
        return told with { Unit = found, Sureness = told.Unit is null && told.Sureness is not HowSure.Guess ? HowSure.Likely : HowSure.Guess, Why = told.Why + why };
    }

    /// <summary>The median step that goes forward; 0 where none does.</summary>
    /// <param name="times">Times.</param>
    /// <returns>The step, in their unit.</returns>
    public static double Step(ReadOnlySpan<double> times)
    {
        var steps = new List<double>();
        for (var i = 1; i < times.Length && steps.Count < StepsSeen; i++)
        {
            if (times[i] > times[i - 1])
            {
                steps.Add(times[i] - times[i - 1]);
            }
        }

        steps.Sort();
        return steps.Count == 0 ? 0 : steps[steps.Count / 2];
    }

    private static bool Fits(double step, LogUnit unit) => step * unit.Scale is >= ShortestStep and <= LongestStep;
}
