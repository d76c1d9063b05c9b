namespace Tickover.Physics.Balancing;

/// <summary>Where a mixture screw runs an engine fastest.</summary>
/// <param name="Turns">Position of the peak in turns from where the screw was found, positive richer.</param>
/// <param name="Deviation">Its standard deviation, turns.</param>
/// <param name="Rpm">Speed there, rpm.</param>
/// <param name="Curvature">Speed lost a turn² from the peak, rpm.</param>
/// <param name="CurvatureDeviation">Its standard deviation.</param>
public sealed record SpeedPeakFit(double Turns, double Deviation, double Rpm, double Curvature, double CurvatureDeviation)
{
    /// <summary>Speed at a position: docs/physics/balancing.md (18).</summary>
    /// <param name="turns">Position, turns from where the screw was found.</param>
    /// <returns>rpm.</returns>
    public double At(double turns) => Rpm - (Math.Max(Curvature, 0) * (turns - Turns) * (turns - Turns)); // (18)
}
