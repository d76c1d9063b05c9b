namespace Tickover.Workshop.Visits.Advising;

/// <summary>One car in the shop.</summary>
public sealed record ShopRow
{
    /// <summary>The visit.</summary>
    public required VisitRecord Record { get; init; }

    /// <summary>Who has the ball.</summary>
    public required ShopGroup Group { get; init; }

    /// <summary>The stage in hand.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The stage in words: "Balance is next", "Mixture".</summary>
    public required string StageWords { get; init; }

    /// <summary>What to do next; null only where nothing is left.</summary>
    public required Advice? Next { get; init; }

    /// <summary>The worst finding that is still open; null where there is none.</summary>
    public required Severity? Worst { get; init; }
}
