namespace Tickover.Physics.Sending;

/// <summary>A piece of a drawn road.</summary>
/// <param name="Seconds">Time spent on it, s.</param>
/// <param name="StartSpeed">Speed at its start, m/s.</param>
/// <param name="EndSpeed">Speed at its end, m/s; straight in time between.</param>
/// <param name="Curvature">One over the radius of the bend, 1/m; positive to the left, zero straight on.</param>
/// <param name="Slope">Rise over run, 1; positive uphill.</param>
/// <param name="Camber">Fall of the road to the right over its width, 1; negative to the left.</param>
public readonly record struct RoadPiece(double Seconds, double StartSpeed, double EndSpeed, double Curvature, double Slope, double Camber);
