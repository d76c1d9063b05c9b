namespace Tickover.Workshop.Cars;

/// <summary>One progression hole.</summary>
/// <param name="PositionMetres">Distance of its centre upstream of the seated plate's edge, m.</param>
/// <param name="DiameterMetres">Diameter, m.</param>
public sealed record CarProgressionHole(double PositionMetres, double DiameterMetres);
