namespace Tickover.Physics.Tanks;

/// <summary>What is measured of a round tank, inside.</summary>
public sealed record RoundTank
{
    /// <summary>Diameter, m; above zero.</summary>
    public required double DiameterMetres { get; init; }

    /// <summary>Length of the straight wall, m; not negative.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>How far each end bulges beyond the straight wall, m; 0 for flat ends.</summary>
    public double HeadMetres { get; init; }

    /// <summary>How the ends bulge.</summary>
    public HeadKind Head { get; init; }

    /// <summary>Which way it lies.</summary>
    public CylinderLie Lie { get; init; }
}
