namespace Tickover.Physics.Sending;

/// <summary>A recorded needle with what the car's accelerometer read on average since the reading before.</summary>
/// <param name="Seconds">Time, s.</param>
/// <param name="Needle">Needle, 0 at E, 1 at F.</param>
/// <param name="Road">Mean of the accelerometer since the reading before.</param>
public readonly record struct GaugeReading(double Seconds, double Needle, RoadSample Road);
