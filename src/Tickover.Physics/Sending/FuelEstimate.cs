namespace Tickover.Physics.Sending;

/// <summary>What is thought to be in both tanks at one reading.</summary>
/// <param name="Seconds">Time, s.</param>
/// <param name="CubicMetres">Best estimate, m³.</param>
/// <param name="LowCubicMetres">Lower end of the band, m³.</param>
/// <param name="HighCubicMetres">Upper end of the band, m³: the truth is meant to lie in the band nine times in ten.</param>
/// <param name="Taken">Whether the reading was taken; false: it was too far from what the model made likely.</param>
public readonly record struct FuelEstimate(double Seconds, double CubicMetres, double LowCubicMetres, double HighCubicMetres, bool Taken);
