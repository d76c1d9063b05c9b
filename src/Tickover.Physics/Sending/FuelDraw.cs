namespace Tickover.Physics.Sending;

/// <summary>What the pump takes and what comes back.</summary>
public sealed record FuelDraw
{
    /// <summary>Depth over the pick-up at which it begins to take air too, m; an assumption.</summary>
    public const double CoverMetres = 0.005;

    /// <summary>Mouth of the pick-up.</summary>
    public required TankPlace PickUp { get; init; }

    /// <summary>What the engine burns, m³/s; not below zero.</summary>
    public double BurntCubicMetresPerSecond { get; init; }

    /// <summary>What comes back through the return line, m³/s; not below zero. The pump takes this and what is burnt.</summary>
    public double ReturnCubicMetresPerSecond { get; init; }

    /// <summary>The tank it comes back to.</summary>
    public TankSide ReturnSide { get; init; }
}
