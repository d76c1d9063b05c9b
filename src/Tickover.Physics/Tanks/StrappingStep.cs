namespace Tickover.Physics.Tanks;

/// <summary>One line of a strapping table.</summary>
/// <param name="VolumeCubicMetres">Fuel in the tank, m³.</param>
/// <param name="DipMetres">How far the stick is wetted, m.</param>
public readonly record struct StrappingStep(double VolumeCubicMetres, double DipMetres);
