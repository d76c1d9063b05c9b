namespace Tickover.Physics.Metering;

/// <summary>The accelerator-pump circuit in steady running: what is pulled over through the open pump jet.</summary>
/// <remarks>Shots on opening the throttle are no part of a steady map.</remarks>
public sealed record PumpCircuit
{
    /// <summary>Bore of the pump jet, m.</summary>
    public required double JetDiameterMetres { get; init; }

    /// <summary>Height of the pump nozzle above the fuel level, m.</summary>
    public double LiftMetres { get; init; } = 0.025;

    /// <summary>Depression that lifts the delivery valve, Pa.</summary>
    public double CheckOpeningPascals { get; init; } = 250;

    /// <summary>Bore of the back-bleed that breaks the suction with air, m; zero where closed.</summary>
    public double BleedDiameterMetres { get; init; }
}
