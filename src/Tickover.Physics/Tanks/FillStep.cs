namespace Tickover.Physics.Tanks;

/// <summary>One step of a measured fill.</summary>
/// <param name="PouredCubicMetres">All that has been poured in since the beginning, m³.</param>
/// <param name="DipMetres">What the stick read then, m.</param>
public readonly record struct FillStep(double PouredCubicMetres, double DipMetres);
