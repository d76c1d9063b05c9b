namespace Tickover.Physics.Breathing;

/// <summary>The way of the air from the trumpet's mouth to the inlet valve of one cylinder.</summary>
public sealed record IntakeTract
{
    /// <summary>Length from the trumpet's mouth to the choke's throat, m.</summary>
    public required double TrumpetLengthMetres { get; init; }

    /// <summary>Length from the choke's throat to the manifold face, m.</summary>
    public required double BarrelLengthMetres { get; init; }

    /// <summary>Length of manifold runner and port from the carburettor's face (or the shared volume) to the valve, m.</summary>
    public required double RunnerLengthMetres { get; init; }

    /// <summary>Mean bore of runner and port, m.</summary>
    public required double RunnerDiameterMetres { get; init; }

    /// <summary>Volume between throttle plate (or shared volume) and valve of one cylinder, m³.</summary>
    public required double PortVolumeCubicMetres { get; init; }

    /// <summary>Total-pressure loss of the runner and its entry in velocity heads of <see cref="RunnerDiameterMetres"/>, 1.</summary>
    public double RunnerLossCoefficient { get; init; } = 1.0;

    /// <summary>Temperature of port walls that warms the charge, K.</summary>
    public double WallTemperatureKelvin { get; init; } = 333.15;

    /// <summary>Part of the difference between wall and ambient that the charge takes up on its way in, 1.</summary>
    public double HeatingEffectiveness { get; init; } = 0.25;

    /// <summary>Temperature drop by evaporating fuel on the way in, K.</summary>
    public double EvaporationCoolingKelvin { get; init; } = 10;
}
