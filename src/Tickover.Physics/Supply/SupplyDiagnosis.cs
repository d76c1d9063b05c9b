namespace Tickover.Physics.Supply;

/// <summary>What readings of a line say is wrong with it.</summary>
public sealed record SupplyDiagnosis
{
    /// <summary>The causes, the likeliest first; their probabilities add up to one.</summary>
    public required IReadOnlyList<SupplyCause> Causes { get; init; }

    /// <summary>What each reading should show on a good line.</summary>
    public required IReadOnlyDictionary<SupplyReadingKind, double> Expected { get; init; }

    /// <summary>What to look at next: what is expected to tell most; null where nothing would tell much.</summary>
    public SupplyCheckKind? Next { get; init; }

    /// <summary>What the next look is expected to tell, bits.</summary>
    public double NextBits { get; init; }

    /// <summary>Largest difference between a reading and the best cause's forecast, in its own uncertainty, 1. Above 3 no cause listed explains the readings.</summary>
    public required double Misfit { get; init; }
}
