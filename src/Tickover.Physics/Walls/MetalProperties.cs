namespace Tickover.Physics.Walls;

/// <summary>What corrosion sums need to know of a metal.</summary>
public sealed record MetalProperties
{
    /// <summary>Which metal.</summary>
    public required Metal Metal { get; init; }

    /// <summary>Anodic index of its surface, V below gold: the higher, the sooner it is eaten.</summary>
    public required double SurfaceIndexVolts { get; init; }

    /// <summary>Anodic index of what lies bare where the coat is through, V; the same as the surface's without a coat.</summary>
    public required double BaseIndexVolts { get; init; }

    /// <summary>Equivalent weight of the base, kg/mol of electrons.</summary>
    public required double EquivalentWeightKilogramsPerMole { get; init; }

    /// <summary>Density of the base, kg/m³.</summary>
    public required double DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Young's modulus of the base, Pa.</summary>
    public required double StiffnessPascals { get; init; }

    /// <summary>Stress a soft sheet of the base bears without taking a set, with something in hand, Pa.</summary>
    public required double GentleStressPascals { get; init; }

    /// <summary>Whether there is a coat of another metal.</summary>
    public bool IsCoated => Math.Abs(SurfaceIndexVolts - BaseIndexVolts) > 0;
}
