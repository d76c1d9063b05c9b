using Tickover.Physics.Metering;

namespace Tickover.Physics.Breathing;

/// <summary>An engine with its barrels, in SI, as the gas exchange and the metering need it.</summary>
public sealed record EngineSpec
{
    /// <summary>Crank mechanism, alike for all cylinders.</summary>
    public required CylinderGeometry Cylinder { get; init; }

    /// <summary>Number of cylinders, 1 to 12.</summary>
    public required int CylinderCount { get; init; }

    /// <summary>Crank angle of firing of each cylinder behind cylinder 1, degrees, 0 to 720; as many as cylinders.</summary>
    public required IReadOnlyList<double> FiringDegrees { get; init; }

    /// <summary>Inlet valves of a cylinder.</summary>
    public required ValveTiming IntakeValve { get; init; }

    /// <summary>Exhaust valves of a cylinder.</summary>
    public required ValveTiming ExhaustValve { get; init; }

    /// <summary>Trumpet, barrel, runner and port of a cylinder.</summary>
    public required IntakeTract Intake { get; init; }

    /// <summary>Exhaust behind the valve.</summary>
    public required ExhaustTract Exhaust { get; init; }

    /// <summary>Heat release.</summary>
    public Combustion Combustion { get; init; } = new();

    /// <summary>The barrels, by index.</summary>
    public required IReadOnlyList<BarrelSpec> Barrels { get; init; }

    /// <summary>Which barrels feed which cylinders; every cylinder in exactly one group.</summary>
    public required IReadOnlyList<IntakeGroup> Groups { get; init; }
}
