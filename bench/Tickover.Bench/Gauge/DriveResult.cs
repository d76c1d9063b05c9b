namespace Tickover.Bench.Gauge;

/// <summary>One drive of the study: rms errors in litres and how often the truth lay in the band.</summary>
internal sealed record DriveResult(double Raw, double Calm, double Mean, double Estimate, double HalfWidth, int Inside, int Readings, bool Filled);
