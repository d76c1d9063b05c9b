namespace Tickover.Workshop.Logs;

/// <summary>A throttle opened fast, as a log has it: rows of the same moment in each list.</summary>
public sealed record TipInTrace
{
    private const double LongestDelay = 5;

    /// <summary>Time, s, rising.</summary>
    public required IReadOnlyList<double> Seconds { get; init; }

    /// <summary>λ; the sensor's delay may still be in it.</summary>
    public required IReadOnlyList<double> Lambda { get; init; }

    /// <summary>Opening of the plate from seated, degrees.</summary>
    public required IReadOnlyList<double> ThrottleDegrees { get; init; }

    /// <summary>Engine speed, rpm.</summary>
    public required IReadOnlyList<double> SpeedRpm { get; init; }

    /// <summary>Delay of λ behind the other columns, s: zero where it was taken off already; null where it is not known.</summary>
    public double? DelaySeconds { get; init; }

    /// <summary>What makes it unusable: a sentence; null where nothing does.</summary>
    /// <returns>The sentence.</returns>
    public string? Unusable()
    {
        const int fewest = 20;
        int[] others = [Lambda.Count, ThrottleDegrees.Count, SpeedRpm.Count];
        if (others.Any(count => count != Seconds.Count))
        {
            return "Time, λ, throttle and speed have not the same number of rows.";
        }

        if (Seconds.Count < fewest)
        {
            return $"{Seconds.Count} rows are too few; {fewest} at least, from a second before the opening to three after it.";
        }

        if (Seconds.Concat(Lambda).Concat(ThrottleDegrees).Concat(SpeedRpm).Any(value => !double.IsFinite(value)))
        {
            return "A row holds no number. Take such rows out first.";
        }

        if (Lambda.Any(lambda => lambda <= 0) || SpeedRpm.Any(speed => speed < 0))
        {
            return "λ must be above zero and speed not below.";
        }

        if (DelaySeconds is { } delay && !(delay is >= 0 and <= LongestDelay))
        {
            return "The sensor's delay must lie between 0 and 5 s.";
        }

        return Seconds.Zip(Seconds.Skip(1)).Any(pair => pair.Second <= pair.First) ? "Time does not rise from row to row." : null;
    }
}
