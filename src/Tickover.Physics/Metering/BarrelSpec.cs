namespace Tickover.Physics.Metering;

/// <summary>One barrel of a carburettor: its air way and its fuel circuits, in SI.</summary>
public sealed record BarrelSpec
{
    /// <summary>Bore, plate, choke and auxiliary venturi.</summary>
    public required BarrelAirWay AirWay { get; init; }

    /// <summary>Float chamber as this barrel sees it.</summary>
    public required FloatChamber Float { get; init; }

    /// <summary>Main circuit.</summary>
    public required MainCircuit Main { get; init; }

    /// <summary>Idle and progression circuit.</summary>
    public required IdleCircuit Idle { get; init; }

    /// <summary>Accelerator-pump circuit as a steady outlet (pull-over); null where there is none.</summary>
    public PumpCircuit? Pump { get; init; }
}
