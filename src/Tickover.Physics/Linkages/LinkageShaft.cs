namespace Tickover.Physics.Linkages;

/// <summary>A shaft of a linkage: cross-shaft, bell-crank or throttle spindle.</summary>
public sealed record LinkageShaft
{
    /// <summary>Where it lies.</summary>
    public required ShaftLine Line { get; init; }

    /// <summary>Diameter, m; zero for a shaft that does not wind up.</summary>
    public double DiameterMetres { get; init; }

    /// <summary>Shear modulus, Pa.</summary>
    public double ShearModulusPascals { get; init; } = LinkageMaterials.SteelShearModulusPascals;

    /// <summary>Its return spring, if it has one.</summary>
    public ReturnSpring? Spring { get; init; }

    /// <summary>Turn of a place one metre of length away under one newton metre, rad/(N m m); zero where it does not wind up.</summary>
    internal double Compliance => DiameterMetres > 0 ? Torsion.WindUp(1, 1, DiameterMetres, ShearModulusPascals) : 0;
}
