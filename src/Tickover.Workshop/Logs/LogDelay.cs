namespace Tickover.Workshop.Logs;

/// <summary>How long λ lags behind the engine: some transport that goes with one over the flow of gas, and the sensor's own.</summary>
/// <param name="FixedSeconds">The part that does not depend on the flow, s.</param>
/// <param name="AtTenthFlowSeconds">What is added at a tenth of the largest flow of the log, s; it goes with one over the flow.</param>
/// <param name="IsFound">Whether it was found in the log; else it is what is usual.</param>
/// <param name="Likeness">Correlation of changes of λ with changes of the throttle at that lag, 0 to 1.</param>
public sealed record LogDelay(double FixedSeconds, double AtTenthFlowSeconds, bool IsFound, double Likeness)
{
    private const double Tenth = 0.1;

    /// <summary>What is usual where a log does not tell: half a second at cruise, under two at idle (trade reference 6).</summary>
    public static LogDelay Usual { get; } = new(0.25, 0.6, false, 0);

    /// <summary>The delay at a flow.</summary>
    /// <param name="flow">Flow as a part of the largest of the log, above zero.</param>
    /// <returns>The delay, s.</returns>
    public double At(double flow) => FixedSeconds + AtTenthFlowSeconds * Tenth / Math.Max(flow, 0.03);
}
