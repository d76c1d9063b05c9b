namespace Tickover.Workshop.JetChoice;

/// <summary>The answer to "which jets?".</summary>
public sealed record JetAdvice
{
    /// <summary>What is fitted now, judged alike.</summary>
    public required JetProposal Now { get; init; }

    /// <summary>The best set that the shelf holds; null where no shelf was given.</summary>
    public required JetProposal? FromShelf { get; init; }

    /// <summary>The best set of the sizes sold.</summary>
    public required JetProposal IfOrdered { get; init; }

    /// <summary>The fewest parts that bring most of the way; choke and tube stay.</summary>
    public required JetProposal LeastEffort { get; init; }

    /// <summary>Part of the driving that falls to each regime, which the chances are weighed by.</summary>
    public required IReadOnlyList<(string Regime, double Part)> Driving { get; init; }

    /// <summary>Sets tried.</summary>
    public required long Tried { get; init; }

    /// <summary>Difference in λ, as a part of it, between the quick reckoning of the search and the full one for the best set: root mean square by weight.</summary>
    public required double QuickReckoning { get; init; }
}
