namespace Tickover.Cli.Json;

/// <summary>A set of jets with what to expect of it.</summary>
internal sealed record ProposedJets
{
    /// <summary>What it is: "fitted now", "best from the shelf", "best if ordered", "least effort".</summary>
    public required string Name { get; init; }

    /// <summary>Expected cost: what the search makes least.</summary>
    public required double Cost { get; init; }

    /// <summary>Chance of being in target over the map, 0 to 1.</summary>
    public required double InTarget { get; init; }

    /// <summary>The same by regime.</summary>
    public required IReadOnlyDictionary<string, double> InTargetByRegime { get; init; }

    /// <summary>Changes in the order of work.</summary>
    public required IReadOnlyList<ProposedChange> Changes { get; init; }

    /// <summary>Expected λ, speed by speed, opening by opening.</summary>
    public required IReadOnlyList<double> Lambda { get; init; }

    /// <summary>Standard deviation of each as a part of it.</summary>
    public required IReadOnlyList<double> Deviation { get; init; }
}
