namespace Tickover.Physics.Supply;

/// <summary>A part of the line with fuel going through it.</summary>
public sealed record PartPoint
{
    /// <summary>The part.</summary>
    public required SupplyPart Part { get; init; }

    /// <summary>Mass flow, kg/s.</summary>
    public required double MassFlow { get; init; }

    /// <summary>Density at the mean temperature, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Dynamic viscosity at the mean temperature, Pa s.</summary>
    public required double Viscosity { get; init; }

    /// <summary>Total pressure at its inlet, Pa absolute.</summary>
    public required double InletPascals { get; init; }

    /// <summary>Total pressure at its outlet, Pa absolute; at a float valve, before its seat.</summary>
    public required double OutletPascals { get; init; }

    /// <summary>What friction and unions took, Pa; minus what the pump added. Height left out.</summary>
    public required double DropPascals { get; init; }

    /// <summary>What its rise took, Pa; negative downhill.</summary>
    public required double HeightPascals { get; init; }

    /// <summary>Fuel's temperature at its inlet, K.</summary>
    public required double InletKelvin { get; init; }

    /// <summary>Fuel's temperature at its outlet, K.</summary>
    public required double OutletKelvin { get; init; }

    /// <summary>True vapour pressure at the outlet's temperature, Pa absolute.</summary>
    public required double VapourPascals { get; init; }

    /// <summary>Whether a regulator holds the pressure down here.</summary>
    public bool Regulates { get; init; }

    /// <summary>Volume flow, m³/s.</summary>
    public double VolumeFlow => MassFlow / Density;

    /// <summary>Mean speed, m/s; zero where it has no bore.</summary>
    public double Speed => Part.SpeedBoreMetres > 0 ? VolumeFlow / Flow.Circle.Area(Part.SpeedBoreMetres) : 0;

    /// <summary>Static pressure at the outlet, Pa absolute: what a gauge there shows, and what boils.</summary>
    public double StaticPascals => OutletPascals - Density * Speed * Speed / 2;

    /// <summary>Static pressure above vapour pressure at the outlet, Pa; negative where it boils.</summary>
    public double VapourMarginPascals => StaticPascals - VapourPascals;
}
