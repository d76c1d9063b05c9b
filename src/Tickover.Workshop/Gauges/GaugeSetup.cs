using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>Two linked tanks with sender and gauge, as a document says.</summary>
public sealed record GaugeSetup
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document it was read from.</summary>
    public required string Document { get; init; }

    /// <summary>The tanks.</summary>
    public required TwoTanks Pair { get; init; }

    /// <summary>Fuel at the start, m³.</summary>
    public required (double Left, double Right) Start { get; init; }

    /// <summary>The road.</summary>
    public required GaugeRoad Road { get; init; }

    /// <summary>Sender and gauge.</summary>
    public SenderFitting Fitting => Pair.Fitting!;
}
