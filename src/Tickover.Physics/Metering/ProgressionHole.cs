namespace Tickover.Physics.Metering;

/// <summary>One progression hole in the barrel wall, swept by the plate's edge.</summary>
/// <param name="PositionMetres">Distance of its centre upstream of the edge of the seated plate, along the bore, m.</param>
/// <param name="DiameterMetres">Diameter, m.</param>
public sealed record ProgressionHole(double PositionMetres, double DiameterMetres);
