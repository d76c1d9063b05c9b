namespace Tickover.Physics.Breathing;

/// <summary>Speeds and throttle openings to be solved; every pair is a point.</summary>
/// <param name="SpeedsRpm">Engine speeds, rpm, above zero.</param>
/// <param name="ThrottleDegrees">Openings from the seated plate, degrees, zero or above.</param>
public sealed record OperatingGrid(IReadOnlyList<double> SpeedsRpm, IReadOnlyList<double> ThrottleDegrees);
