namespace Tickover.Physics.Gauges;

/// <summary>What was read at one filling.</summary>
/// <param name="VolumeCubicMetres">Fuel in, m³; not negative.</param>
/// <param name="Ohms">Resistance of the sender, its wire off, Ω; infinite for open, null where it was not read.</param>
/// <param name="Needle">Where the needle stood, 0 at E to 1 at F; null where it was not read.</param>
public readonly record struct SenderReading(double VolumeCubicMetres, double? Ohms, double? Needle);
