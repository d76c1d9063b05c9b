using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>What a gauge document describes: two tanks, their gauge, what is in them and the road.</summary>
public sealed record GaugeStory
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document as it was read.</summary>
    public required string Document { get; init; }

    /// <summary>Tanks, pipe, sender and gauge.</summary>
    public required TwoTanks Tanks { get; init; }

    /// <summary>Fuel at the beginning, left and right, m³.</summary>
    public required (double Left, double Right) Start { get; init; }

    /// <summary>The road, in a few words.</summary>
    public required string RoadName { get; init; }

    /// <summary>The road.</summary>
    public required RoadTrace Road { get; init; }
}
