namespace Tickover.Workshop.Calibration;

/// <summary>A fit, or why there is none.</summary>
/// <param name="Fit">The fit; null where it is refused.</param>
/// <param name="Refusals">Why it is refused and what would do, in plain sentences.</param>
public sealed record CalibrationOutcome(CarFit? Fit, IReadOnlyList<string> Refusals);
