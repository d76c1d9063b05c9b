namespace Tickover.Reports.Charts;

/// <summary>Round values along an axis.</summary>
internal static class Ticks
{
    private static readonly double[] Steps = [1, 2, 5, 10];
    private static readonly double[] Openings = [0, 1, 2, 5, 10, 20, 30, 40, 50, 60, 70, 80, 90];

    // Values a hair outside the range through rounding still get their tick
    private const double StepSlack = 1e-9;

    /// <summary>Multiples of 1, 2 or 5 times a power of ten within a range.</summary>
    /// <param name="from">Smaller end.</param>
    /// <param name="to">Larger end.</param>
    /// <param name="most">The most ticks wanted, at least 2.</param>
    internal static IReadOnlyList<double> Nice(double from, double to, int most)
    {
        var step = NiceStep(from, to, most);
        if (step <= 0)
        {
            return double.IsFinite(from) ? [from] : [];
        }

        var first = Math.Ceiling(from / step - StepSlack);
        var last = Math.Floor(to / step + StepSlack);
        return [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => Clean((first + i) * step, step))];
    }

    /// <summary>The step that <see cref="Nice"/> uses; zero for an empty or unusable range.</summary>
    internal static double NiceStep(double from, double to, int most)
    {
        var span = to - from;
        if (!double.IsFinite(span) || span <= 0 || most < 2)
        {
            return 0;
        }

        var power = Math.Pow(10, Math.Floor(Math.Log10(span / most)));
        return Steps.Select(s => s * power).First(s => Math.Floor(to / s + StepSlack) - Math.Ceiling(from / s - StepSlack) + 1 <= most || s == 10 * power);
    }

    /// <summary>Throttle openings in degrees that stay a given distance apart on their axis.</summary>
    internal static IReadOnlyList<double> ForOpening(Scale axis, double apart)
    {
        var (low, high) = (Math.Min(axis.Values.From, axis.Values.To), Math.Max(axis.Values.From, axis.Values.To));
        var kept = new List<double>();
        foreach (var opening in Openings.Where(o => o >= low - StepSlack && o <= high + StepSlack).OrderDescending())
        {
            if (kept.Count == 0 || Math.Abs(axis.ToPlace(opening) - axis.ToPlace(kept[^1])) >= apart)
            {
                kept.Add(opening);
            }
        }

        return kept;
    }

    // 3 × 0.1 is 0.30000000000000004 in binary; a tick is the decimal number
    private static double Clean(double value, double step)
    {
        var digits = (int)Math.Clamp(2 - Math.Floor(Math.Log10(step)), 0, 15);
        return Math.Round(value, digits);
    }
}
