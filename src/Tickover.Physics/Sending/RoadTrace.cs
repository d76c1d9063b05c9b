namespace Tickover.Physics.Sending;

/// <summary>What the road does to the car: accelerations as a meter fixed to it reads them, at equal steps of time.</summary>
/// <remarks>Ahead is positive when the car speeds up or climbs, left when it turns left or leans to the right: both push fuel the other way.</remarks>
public sealed class RoadTrace
{
    private readonly double[] _ahead;
    private readonly double[] _left;

    /// <summary>Makes a trace.</summary>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <param name="ahead">Forward, m/s².</param>
    /// <param name="left">To the left, m/s²; as many.</param>
    /// <exception cref="ArgumentException">Fewer than two samples or not as many of both.</exception>
    public RoadTrace(double stepSeconds, double[] ahead, double[] left)
    {
        ArgumentNullException.ThrowIfNull(ahead);
        ArgumentNullException.ThrowIfNull(left);
        if (ahead.Length < 2 || ahead.Length != left.Length)
        {
            throw new ArgumentException("A trace needs two samples or more, as many ahead as to the left.", nameof(ahead));
        }

        StepSeconds = Precondition.Positive(stepSeconds);
        (_ahead, _left) = (ahead, left);
    }

    /// <summary>Time between samples, s.</summary>
    public double StepSeconds { get; }

    /// <summary>Samples.</summary>
    public int Count => _ahead.Length;

    /// <summary>From the first sample to the last, s.</summary>
    public double Seconds => (Count - 1) * StepSeconds;

    /// <summary>Forward, m/s².</summary>
    public ReadOnlySpan<double> Ahead => _ahead;

    /// <summary>To the left, m/s².</summary>
    public ReadOnlySpan<double> Left => _left;

    /// <summary>A car that stands on level ground.</summary>
    /// <param name="seconds">How long, s.</param>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace Standing(double seconds, double stepSeconds = 0.01) => Steady(seconds, 0, 0, stepSeconds);

    /// <summary>The same acceleration all the time.</summary>
    /// <param name="seconds">How long, s.</param>
    /// <param name="ahead">Forward, m/s².</param>
    /// <param name="left">To the left, m/s².</param>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace Steady(double seconds, double ahead, double left, double stepSeconds = 0.01)
    {
        var count = Math.Max(2, (int)Math.Round(seconds / stepSeconds) + 1);
        var (forward, sideways) = (new double[count], new double[count]);
        Array.Fill(forward, ahead);
        Array.Fill(sideways, left);
        return new RoadTrace(stepSeconds, forward, sideways);
    }

    /// <summary>A trace after another of the same step.</summary>
    /// <param name="next">What follows.</param>
    /// <returns>Both.</returns>
    public RoadTrace Then(RoadTrace next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return next.StepSeconds == StepSeconds
            ? new RoadTrace(StepSeconds, [.. _ahead, .. next._ahead], [.. _left, .. next._left])
            : throw new ArgumentException("Only traces of the same step join.", nameof(next));
    }

    /// <summary>The same road with samples on straight lines between these.</summary>
    /// <param name="stepSeconds">Time between the new samples, s.</param>
    /// <returns>The trace.</returns>
    public RoadTrace Resampled(double stepSeconds)
    {
        if (stepSeconds == StepSeconds)
        {
            return this;
        }

        var count = Math.Max(2, (int)Math.Floor(Seconds / stepSeconds + 1e-9) + 1);
        var (ahead, left) = (new double[count], new double[count]);
        for (var i = 0; i < count; i++)
        {
            var place = Math.Min(i * stepSeconds / StepSeconds, Count - 1);
            var cell = Math.Min((int)place, Count - 2);
            ahead[i] = _ahead[cell] + (place - cell) * (_ahead[cell + 1] - _ahead[cell]);
            left[i] = _left[cell] + (place - cell) * (_left[cell + 1] - _left[cell]);
        }

        return new RoadTrace(stepSeconds, ahead, left);
    }
}
