namespace Tickover.Workshop.Logs;

/// <summary>One moment of a log, or the mean over some; NaN where the log has no such channel.</summary>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="Degrees">Opening from seated, degrees.</param>
/// <param name="ManifoldPascals">Absolute pressure behind the plates, Pa.</param>
/// <param name="RoadMetresPerSecond">Road speed, m/s.</param>
internal readonly record struct LogMoment(double SpeedRpm, double Degrees, double ManifoldPascals, double RoadMetresPerSecond);
