using Tickover.Physics.Tanks;

namespace Tickover.Physics.Gauges;

/// <summary>A sender and a gauge that shall agree.</summary>
public sealed record GaugeBench
{
    /// <summary>Resistance over fuel, Ω over m³.</summary>
    public required MonotoneCurve Sender { get; init; }

    /// <summary>The gauge.</summary>
    public required GaugeLaw Gauge { get; init; }

    /// <summary>Fuel in at which the needle should stand on E, m³.</summary>
    public required double EmptyCubicMetres { get; init; }

    /// <summary>Fuel in at which it should stand on F, m³; above the other.</summary>
    public required double FullCubicMetres { get; init; }

    /// <summary>The arm; null where it was not measured, and then no bend is looked for.</summary>
    public FloatArm? Arm { get; init; }

    /// <summary>The tank's table, needed for a bend.</summary>
    public StrappingTable? Table { get; init; }
}
