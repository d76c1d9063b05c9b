namespace Tickover.Physics.Sending;

/// <summary>One of two tanks joined by a pipe: its table, its place in the car and how fuel sloshes in it.</summary>
public sealed record LinkedTank
{
    /// <summary>Damping of a small tank without baffle, share of critical: the middle of what is assumed for such tanks; measure it where it matters.</summary>
    public const double DefaultDamping = 0.05;

    /// <summary>Level against volume.</summary>
    public required LevelTable Table { get; init; }

    /// <summary>Middle of the free surface ahead of the car's origin, m.</summary>
    public double AheadMetres { get; init; }

    /// <summary>Middle of the free surface left of the car's middle, m; below zero for the right tank.</summary>
    public required double LeftMetres { get; init; }

    /// <summary>Floor above the car's origin, m.</summary>
    public double FloorMetres { get; init; }

    /// <summary>Width inside across the car, m; above zero.</summary>
    public required double WidthMetres { get; init; }

    /// <summary>Length inside along the car, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Damping of the first sloshing mode, share of critical, above 0 and below 1: 0.0005 smooth and large, 0.02 to 0.15 small and rough, more with baffles.</summary>
    public double Damping { get; init; } = DefaultDamping;
}
