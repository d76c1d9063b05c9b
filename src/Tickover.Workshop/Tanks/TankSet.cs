using Tickover.Physics.Gauges;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks;

/// <summary>A car's tanks, sender and gauge as described.</summary>
public sealed record TankSet
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document it was read from.</summary>
    public required string Document { get; init; }

    /// <summary>The tanks; empty where only a sender was described.</summary>
    public required IReadOnlyList<TankPart> Tanks { get; init; }

    /// <summary>What all tanks hold, l.</summary>
    public required double CapacityLitres { get; init; }

    /// <summary>Ways the car stands that are looked at.</summary>
    public IReadOnlyList<TankStance> Stances { get; init; } = TankStance.Usual;

    /// <summary>A fill in steps; null where there was none.</summary>
    public FillPart? Fill { get; init; }

    /// <summary>The sender; null where nothing is said of it.</summary>
    public SenderPart? Sender { get; init; }

    /// <summary>The gauge; null where nothing is said of it.</summary>
    public GaugePart? Gauge { get; init; }

    /// <summary>Readings of ohms and needle.</summary>
    public IReadOnlyList<SenderReading> Readings { get; init; } = [];

    /// <summary>Fuel in all tanks when they were last read, l: at the last reading, else after the last step of a fill of all tanks; null where nothing was read.</summary>
    public double? LastKnownLitres => Readings.Count > 0 ? TankUnits.Litres(Readings[^1].VolumeCubicMetres)
        : Fill is { } fill && (fill.IsJoined || Tanks.Count == 1) ? fill.Steps[^1].Litres
        : null;

    /// <summary>All tanks with one level; null without tanks.</summary>
    public TankShape? Joined { get; init; }
}
