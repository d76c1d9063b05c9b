namespace Tickover.Physics.Metering;

/// <summary>One row of holes round an emulsion tube.</summary>
/// <param name="DepthMetres">Depth of the row's centre below the fuel level at rest, m; negative above it.</param>
/// <param name="Count">Number of holes in the row.</param>
/// <param name="DiameterMetres">Diameter of each hole, m.</param>
public sealed record EmulsionHoleRow(double DepthMetres, int Count, double DiameterMetres);
