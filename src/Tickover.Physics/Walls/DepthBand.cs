namespace Tickover.Physics.Walls;

/// <summary>A depth with the band that holds it nine times in ten.</summary>
/// <param name="LowMetres">One in twenty lies below, m.</param>
/// <param name="MiddleMetres">Half lie below, m.</param>
/// <param name="HighMetres">One in twenty lies above, m.</param>
public readonly record struct DepthBand(double LowMetres, double MiddleMetres, double HighMetres);
