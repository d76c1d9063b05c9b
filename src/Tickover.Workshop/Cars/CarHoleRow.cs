namespace Tickover.Workshop.Cars;

/// <summary>One row of emulsion holes.</summary>
/// <param name="DepthMetres">Depth of the row below the fuel level at rest, m; negative above it.</param>
/// <param name="Count">Holes in the row.</param>
/// <param name="DiameterMetres">Diameter of each, m.</param>
public sealed record CarHoleRow(double DepthMetres, int Count, double DiameterMetres);
