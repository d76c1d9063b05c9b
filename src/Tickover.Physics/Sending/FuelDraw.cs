namespace Tickover.Physics.Sending;

/// <summary>What the engine takes out of the tanks and what the return line gives back.</summary>
public sealed record FuelDraw
{
    /// <summary>Burnt, m³/s.</summary>
    public double BurntCubicMetresPerSecond { get; init; }

    /// <summary>Pumped round through the return line, m³/s, on top of what is burnt.</summary>
    public double ReturnedCubicMetresPerSecond { get; init; }

    /// <summary>Tank with the pick-up.</summary>
    public TankSide PickUpSide { get; init; }

    /// <summary>Tank that the return line leads to.</summary>
    public TankSide ReturnSide { get; init; }

    /// <summary>Mouth of the pick-up.</summary>
    public TankPlace PickUp { get; init; } = new(0, 0, 0.010);

    /// <summary>No engine runs.</summary>
    public static FuelDraw None { get; } = new();
}
