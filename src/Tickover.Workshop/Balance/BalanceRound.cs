using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Balance;

/// <summary>Every barrel once, in a fixed order, the first again last.</summary>
public sealed record BalanceRound
{
    /// <summary>Number from 1 in the order taken.</summary>
    public required int Number { get; init; }

    /// <summary>Speed held by the cross-shaft, rpm; null at idle.</summary>
    public double? HeldRpm { get; init; }

    /// <summary>As found, working or as left.</summary>
    public Moment Moment { get; init; } = Moment.Working;

    /// <summary>Whether the rods between carburettors were off.</summary>
    public bool RodsOff { get; init; }

    /// <summary>Oil temperature, °C; null where not noted.</summary>
    public double? OilCelsius { get; init; }

    /// <summary>The barrels in the order read.</summary>
    public required IReadOnlyList<BarrelReading> Readings { get; init; }

    /// <summary>The first barrel read again at the end; null where that was not done.</summary>
    public BarrelReading? Again { get; init; }

    /// <summary>Whether it was taken at idle.</summary>
    public bool IsIdle => HeldRpm is null;
}
