namespace Tickover.Physics.Sending;

/// <summary>Fuel put in at once.</summary>
/// <param name="Seconds">When, s from the start.</param>
/// <param name="LeftCubicMetres">Into the left tank, m³.</param>
/// <param name="RightCubicMetres">Into the right tank, m³.</param>
public readonly record struct FuelFill(double Seconds, double LeftCubicMetres, double RightCubicMetres);
