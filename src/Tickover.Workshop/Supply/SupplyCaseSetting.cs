namespace Tickover.Workshop.Supply;

/// <summary>What a case is made of, in SI.</summary>
public sealed record SupplyCaseSetting
{
    /// <summary>Which case.</summary>
    public required SupplyCaseKind Kind { get; init; }

    /// <summary>Part of the full-load demand that is taken, 1; null at idle, which has a demand of its own.</summary>
    public double? Load { get; init; }

    /// <summary>Fuel in the tank, K.</summary>
    public required double TankKelvin { get; init; }

    /// <summary>Air under the floor, K.</summary>
    public required double FloorKelvin { get; init; }

    /// <summary>Air under the bonnet, K.</summary>
    public required double BonnetKelvin { get; init; }

    /// <summary>Height above the sea, m.</summary>
    public double AltitudeMetres { get; init; }

    /// <summary>Engine speed, rev/min.</summary>
    public required double Rpm { get; init; }

    /// <summary>Voltage at the pump, V; null where nothing is said.</summary>
    public double? Volts { get; init; }
}
