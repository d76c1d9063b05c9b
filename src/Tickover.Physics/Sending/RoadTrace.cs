namespace Tickover.Physics.Sending;

/// <summary>A drive as readings of an accelerometer at even times.</summary>
public sealed class RoadTrace
{
    private readonly RoadSample[] _samples;

    /// <summary>A trace.</summary>
    /// <param name="stepSeconds">Time between samples, s; above zero.</param>
    /// <param name="samples">The readings; at least two, all finite, the pull towards the floor above zero.</param>
    public RoadTrace(double stepSeconds, IEnumerable<RoadSample> samples)
    {
        StepSeconds = Precondition.Positive(stepSeconds);
        _samples = [.. samples];
        if (_samples.Length < 2)
        {
            throw new ArgumentException($"{_samples.Length} samples; a trace has two or more.", nameof(samples));
        }

        foreach (var s in _samples)
        {
            Precondition.Finite(s.AheadMetresPerSecondSquared);
            Precondition.Finite(s.LeftMetresPerSecondSquared);
            Precondition.Positive(s.UpMetresPerSecondSquared);
        }
    }

    /// <summary>Time between samples, s.</summary>
    public double StepSeconds { get; }

    /// <summary>The readings.</summary>
    public IReadOnlyList<RoadSample> Samples => _samples;

    /// <summary>From the first reading to the last, s.</summary>
    public double DurationSeconds => (_samples.Length - 1) * StepSeconds;

    internal RoadSample[] Readings => _samples;

    /// <summary>Standing on the level.</summary>
    /// <param name="seconds">How long, s; above zero.</param>
    /// <param name="stepSeconds">Time between samples, s; above zero.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace Standing(double seconds, double stepSeconds = 0.01) =>
        new(stepSeconds, Enumerable.Repeat(RoadSample.Level, (int)Math.Ceiling(Precondition.Positive(seconds) / stepSeconds) + 1));

    /// <summary>This drive and another after it.</summary>
    /// <param name="next">The other, with the same time between samples.</param>
    /// <returns>Both.</returns>
    /// <exception cref="ArgumentException">The times between samples differ.</exception>
    public RoadTrace Then(RoadTrace next) => next.StepSeconds == StepSeconds
        ? new RoadTrace(StepSeconds, _samples.Concat(next._samples))
        : throw new ArgumentException($"{next.StepSeconds} s after {StepSeconds} s between samples; they must be the same.", nameof(next));
}
