namespace Tickover.Workshop.Logs;

/// <summary>The opening in a trace, the levels of λ before and after it, and what lies between.</summary>
internal sealed class TipInWindow
{
    private readonly TipInTrace _trace;

    private TipInWindow(TipInTrace trace, int start, double rise) => (_trace, Start, Rise) = (trace, start, rise);

    /// <summary>Row at which the throttle begins to open.</summary>
    internal int Start { get; }

    /// <summary>Degrees it opens within half a second.</summary>
    internal double Rise { get; }

    /// <summary>Median λ before.</summary>
    internal double LevelBefore { get; private set; }

    /// <summary>Median λ once settled.</summary>
    internal double LevelAfter { get; private set; }

    /// <summary>Scatter of λ before, as a standard deviation.</summary>
    internal double Noise { get; private set; }

    /// <summary>Median speed once settled, rpm.</summary>
    internal double SpeedAfter { get; private set; }

    /// <summary>λ that counts as off.</summary>
    internal double Off => Math.Max(TipInLimits.Off, TipInLimits.NoisesOff * Noise);

    private double StartSeconds => _trace.Seconds[Start];

    /// <summary>Finds the fastest opening.</summary>
    internal static TipInWindow Find(TipInTrace trace)
    {
        var (start, rise) = (0, 0.0);
        for (int i = 0, j = 0; i < trace.Seconds.Count; i++)
        {
            while (j + 1 < trace.Seconds.Count && trace.Seconds[j + 1] - trace.Seconds[i] <= TipInLimits.OpeningSeconds)
            {
                j++;
            }

            var opened = trace.ThrottleDegrees[j] - trace.ThrottleDegrees[i];
            if (opened >= rise && opened > 0)
            {
                (start, rise) = (i, opened); // the last of equals: where it begins to move
            }
        }

        return new TipInWindow(trace, start, rise);
    }

    /// <summary>Takes the levels.</summary>
    /// <returns>Null, or why they cannot be taken: a sentence.</returns>
    internal string? Measure()
    {
        var before = Rows(-TipInLimits.Before, 0).Where(i => i <= Start).ToArray();
        var after = Rows(TipInLimits.Settled, TipInLimits.After).ToArray();
        var open = _trace.ThrottleDegrees[Start] + Rise / 2;
        if (before.Length < 4 || StartSeconds - _trace.Seconds[before[0]] < TipInLimits.Before / 2)
        {
            return "The log begins too late: a second of steady running before the opening is needed.";
        }

        if (after.Length < 4 || _trace.Seconds[after[^1]] - _trace.Seconds[after[0]] < TipInLimits.ShortestSettled)
        {
            return "The log ends too soon: hold the throttle for three seconds and more.";
        }

        if (after.Any(i => _trace.ThrottleDegrees[i] < open))
        {
            return "The throttle was let go before the mixture settled. Hold it for three seconds and more.";
        }

        var steps = Rows(-TipInLimits.Before, TipInLimits.Settled).Skip(1).Max(i => _trace.Seconds[i] - _trace.Seconds[i - 1]);
        if (steps > TipInLimits.LongestStep)
        {
            return FormattableString.Invariant($"Rows lie up to {steps:0.00} s apart; a lean spike can pass between them. Log ten times a second or faster.");
        }

        LevelBefore = Median(before.Select(i => _trace.Lambda[i]));
        LevelAfter = Median(after.Select(i => _trace.Lambda[i]));
        SpeedAfter = Median(after.Select(i => _trace.SpeedRpm[i]));
        const double deviationOfNormal = 1.4826;
        Noise = deviationOfNormal * Median(before.Select(i => Math.Abs(_trace.Lambda[i] - LevelBefore)));
        return Noise > TipInLimits.TooNoisy
            ? FormattableString.Invariant($"λ wanders by {Noise:0.00} before the opening already: warm the sensor and the engine, and look for a misfire.")
            : null;
    }

    /// <summary>The largest stretch on one side of the settled level, after the change has reached the sensor.</summary>
    /// <param name="side">1 for lean, -1 for rich.</param>
    /// <param name="engine">The engine.</param>
    internal TipInExcursion? Largest(int side, TipInEngine engine)
    {
        var rows = Rows(0, TipInLimits.Settled + (_trace.DelaySeconds ?? 0)).ToArray();
        var arrived = Array.FindIndex(rows, HasArrived);
        TipInExcursion? largest = null;
        for (var k = Math.Max(arrived, 0); arrived >= 0 && k < rows.Length; k++)
        {
            var first = k;
            while (k < rows.Length && side * (_trace.Lambda[rows[k]] - LevelAfter) > 0)
            {
                k++;
            }

            if (k > first && Stretch(rows[first], rows[Math.Min(k, rows.Length - 1)], side, engine) is { } stretch
                && (largest is null || Math.Abs(stretch.Grams) > Math.Abs(largest.Grams)))
            {
                largest = stretch;
            }
        }

        return largest;
    }

    private TipInExcursion? Stretch(int first, int last, int side, TipInEngine engine)
    {
        var rows = Enumerable.Range(first, last - first + 1).ToArray();
        var peak = rows.Select(i => _trace.Lambda[i]).Aggregate((a, b) => side * (b - a) > 0 ? b : a);
        // Lean counts beyond both levels, so that a mixture that is leaner before than after is no spike.
        var beyond = side > 0 ? Math.Max(LevelBefore, LevelAfter) : Math.Min(LevelBefore, LevelAfter);
        var plain = rows.Where(i => side * (_trace.Lambda[i] - LevelAfter) > Off).ToArray();
        if (plain.Length == 0 || (side * (peak - beyond) <= Off && !Hangs(plain)))
        {
            return null;
        }

        var grams = 0.0;
        for (var i = first; i < last; i++)
        {
            var missing = (Missing(i, engine) + Missing(i + 1, engine)) / 2;
            grams += missing * (_trace.Seconds[i + 1] - _trace.Seconds[i]) * 1000;
        }

        return new TipInExcursion(_trace.Seconds[plain[0]], _trace.Seconds[plain[^1]], peak, grams);
    }

    /// <summary>Whether a lean stretch stays within what λ was before: a shot a little small, or one a little short.</summary>
    internal bool IsMild(TipInExcursion lean) => lean.Peak <= Math.Max(LevelBefore, LevelAfter) + Off;

    /// <summary>Whether the sensor sees the gas of the opening: by its delay, or else by the first change.</summary>
    private bool HasArrived(int row) => _trace.DelaySeconds is { } delay
        ? _trace.Seconds[row] >= StartSeconds + delay + TipInLimits.SensorSeconds
        : Math.Abs(_trace.Lambda[row] - LevelBefore) > Off;

    private bool Hangs(int[] plain) =>
        _trace.DelaySeconds is not null && _trace.Seconds[plain[^1]] - _trace.Seconds[plain[0]] > TipInLimits.HangingSeconds;

    private double Missing(int row, TipInEngine engine) =>
        engine.Air(_trace.SpeedRpm[row], engine.Filling) / engine.StoichiometricRatio * (1 / LevelAfter - 1 / _trace.Lambda[row]); // metering (27)

    private IEnumerable<int> Rows(double from, double to) =>
        Enumerable.Range(0, _trace.Seconds.Count).Where(i => _trace.Seconds[i] - StartSeconds >= from && _trace.Seconds[i] - StartSeconds <= to);

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
