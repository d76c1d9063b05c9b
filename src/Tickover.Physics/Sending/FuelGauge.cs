namespace Tickover.Physics.Sending;

/// <summary>The gauge, its needle's lag and the lamp.</summary>
public sealed record FuelGauge
{
    /// <summary>Lag of a heated-strip gauge, s: 10 to 30 assumed, no published figure found; measure it.</summary>
    public const double ThermalLagSeconds = 12;

    /// <summary>Lag of a moving-iron gauge, s: 0.3 to 1, from memory.</summary>
    public const double MovingIronLagSeconds = 0.5;

    /// <summary>The circuit.</summary>
    public required GaugeCircuit Circuit { get; init; }

    /// <summary>Time in which the needle goes 63 % of its way, s; not below zero.</summary>
    public double LagSeconds { get; init; } = ThermalLagSeconds;

    /// <summary>Time over which a box between sender and gauge averages, s; 0: none.</summary>
    public double AveragingSeconds { get; init; }

    /// <summary>Travel of the arm below which the lamp's contact closes; below 0: no lamp.</summary>
    public double LampTravel { get; init; } = 0.1;
}
