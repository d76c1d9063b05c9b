namespace Tickover.Bench.Road;

/// <summary>One moment of a drive.</summary>
/// <param name="Seconds">Time, s.</param>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="Degrees">Opening from seated, degrees.</param>
/// <param name="DegreesPerSecond">How fast it opens.</param>
/// <param name="RoadMetresPerSecond">Road speed, m/s.</param>
/// <param name="CoolantKelvins">Coolant, K.</param>
internal readonly record struct DriveMoment(
    double Seconds, double SpeedRpm, double Degrees, double DegreesPerSecond, double RoadMetresPerSecond, double CoolantKelvins);
