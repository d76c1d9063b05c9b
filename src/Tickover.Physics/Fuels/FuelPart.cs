namespace Tickover.Physics.Fuels;

/// <summary>One component of a blend.</summary>
/// <param name="Component">The liquid.</param>
/// <param name="VolumeFraction">Its share of the volume before mixing at 20 °C, 0 to 1.</param>
public sealed record FuelPart(FuelComponent Component, double VolumeFraction);
