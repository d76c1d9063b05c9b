namespace Tickover.Physics.Metering;

/// <summary>The air way of one barrel: throttle bore and plate, choke, auxiliary venturi.</summary>
public sealed record BarrelAirWay
{
    /// <summary>Throttle bore, m.</summary>
    public required double ThrottleBoreMetres { get; init; }

    /// <summary>Angle of the seated plate from the plane square to the bore, radians.</summary>
    public required double ClosedAngleRadians { get; init; }

    /// <summary>Spindle diameter, m.</summary>
    public required double SpindleDiameterMetres { get; init; }

    /// <summary>Choke (main venturi) throat diameter, m.</summary>
    public required double ChokeDiameterMetres { get; init; }

    /// <summary>Part of the choke's throat area that the auxiliary venturi's body takes, 1.</summary>
    public double ChokeObstruction { get; init; } = 0.17;

    /// <summary>Discharge coefficient of the choke on its free area, 1.</summary>
    public double ChokeDischargeCoefficient { get; init; } = 0.90;

    /// <summary>Total-pressure loss of choke and auxiliary venturi in velocity heads of the free throat, 1.</summary>
    public double ChokeLossCoefficient { get; init; } = 0.35;

    /// <summary>Depression in the auxiliary venturi over that in the choke, forward flow, 1.</summary>
    public double AuxiliaryVenturiGain { get; init; } = 2.4;

    /// <summary>Part of the forward signal that the same flow gives when it runs backwards, 1.</summary>
    public double ReverseSignalFactor { get; init; } = 0.10;

    /// <summary>Discharge coefficient of the throttle plate's gap, 1.</summary>
    public double PlateDischargeCoefficient { get; init; } = 0.80;

    /// <summary>Free area of by-pass drillings round the shut plate, m².</summary>
    public double BypassAreaSquareMetres { get; init; }
}
