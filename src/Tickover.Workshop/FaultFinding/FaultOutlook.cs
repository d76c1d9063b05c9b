namespace Tickover.Workshop.FaultFinding;

/// <summary>What a case looks like after the answers so far.</summary>
public sealed record FaultOutlook
{
    /// <summary>How far it has got.</summary>
    public required FaultStanding Standing { get; init; }

    /// <summary>Causes, the most probable first.</summary>
    public required IReadOnlyList<FaultRank> Ranking { get; init; }

    /// <summary>Probability that it is something the knowledge does not hold, 0 to 1.</summary>
    public required double Other { get; init; }

    /// <summary>Probability that two or more causes are at work together, 0 to 1.</summary>
    public required double Several { get; init; }

    /// <summary>What is still open, bits.</summary>
    public required double OpenBits { get; init; }

    /// <summary>The next test; null where the case is not open.</summary>
    public FaultNext? Next { get; init; }

    /// <summary>What does not go together, in words; empty where all does.</summary>
    public required IReadOnlyList<string> Contradictions { get; init; }

    /// <summary>Symptoms told that no cause that stands explains.</summary>
    public required IReadOnlyList<FaultSymptom> Unexplained { get; init; }

    /// <summary>Causes that stand.</summary>
    public IEnumerable<FaultRank> Found => Ranking.TakeWhile(r => r.Probability >= FaultFinder.Stands);
}
