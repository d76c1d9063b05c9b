using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Supply;

/// <summary>What the engine takes, and where that figure comes from.</summary>
public sealed record SupplyEngine
{
    /// <summary>Fuel at full load, kg/s.</summary>
    public required double FullLoadKilogramsPerSecond { get; init; }

    /// <summary>Fuel at idle, kg/s.</summary>
    public required double IdleKilogramsPerSecond { get; init; }

    /// <summary>How the full-load figure was come by, in a sentence with its numbers.</summary>
    public required string Origin { get; init; }

    /// <summary>How the idle figure was come by, in a sentence with its numbers.</summary>
    public required string IdleOrigin { get; init; }

    /// <summary>How both were worked out; empty where the document says them.</summary>
    public IReadOnlyList<WorkingStep> Working { get; init; } = [];

    /// <summary>Smallest jet or bleed, m; null where nothing is said.</summary>
    public double? SmallestJetMetres { get; init; }
}
