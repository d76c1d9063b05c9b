namespace Tickover.Workshop.Linkages;

/// <summary>What warmth does to one carburettor.</summary>
/// <param name="IdleDegrees">Change of its plates with the pedal up, degrees; above zero: held further open.</param>
/// <param name="QuarterDegrees">Change at a quarter of the pedal, degrees.</param>
/// <param name="IdlePart">Change of its air against the mean with the pedal up, as a part.</param>
public sealed record WarmLine(double IdleDegrees, double QuarterDegrees, double IdlePart);
