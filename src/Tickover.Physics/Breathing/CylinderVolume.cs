namespace Tickover.Physics.Breathing;

/// <summary>Cylinder volume at a crank angle.</summary>
/// <param name="VolumeCubicMetres">Volume, m³.</param>
/// <param name="SlopeCubicMetresPerDegree">Change a crank degree, m³.</param>
public readonly record struct CylinderVolume(double VolumeCubicMetres, double SlopeCubicMetresPerDegree);
