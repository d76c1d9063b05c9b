namespace Tickover.Physics.Flow;

/// <summary>An engine and the choke speed wanted, from which choke and main jet follow in the textbooks' way.</summary>
public sealed record SizingCase
{
    /// <summary>Swept volume of the whole engine, m³.</summary>
    public required double SweptVolumeCubicMetres { get; init; }

    /// <summary>Speed, rev/min.</summary>
    public required double SpeedRpm { get; init; }

    /// <summary>Volumetric efficiency against the air before the choke, 1.</summary>
    public required double VolumetricEfficiency { get; init; }

    /// <summary>Carburettors that share the air evenly, 1.</summary>
    public int CarburettorCount { get; init; } = 1;

    /// <summary>Air before the choke.</summary>
    public required GasState Upstream { get; init; }

    /// <summary>Throat speed wanted, m/s.</summary>
    public required double ThroatSpeedMetresPerSecond { get; init; }

    /// <summary>Part of the throat's area the stream fills, 1.</summary>
    public required double AreaCoefficient { get; init; }

    /// <summary>Diameter of nozzle or emulsion tube in the throat over the choke's, 1.</summary>
    public double ObstructionRatio { get; init; }

    /// <summary>Air to fuel by mass wanted, 1.</summary>
    public required double AirFuelRatio { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    public required double FuelDensity { get; init; }

    /// <summary>Height of the nozzle's lip above the fuel, m.</summary>
    public double LipHeightMetres { get; init; }

    /// <summary>Discharge coefficient of the jet, 1.</summary>
    public required double JetCoefficient { get; init; }

    /// <summary>Free-fall acceleration, m/s²; textbooks take 9.81.</summary>
    public double Gravity { get; init; } = Air.AirConstants.StandardGravityMetresPerSecondSquared;
}
