namespace Tickover.Workshop.Visits.Measures;

/// <summary>One measure of a visit before and after the work, over all its places.</summary>
public sealed record MeasureComparison
{
    /// <summary>The measure.</summary>
    public required MeasureDefinition Measure { get; init; }

    /// <summary>The places, in their order.</summary>
    public required IReadOnlyList<BeforeAndAfterRow> Rows { get; init; }

    /// <summary>How the places lay as found; null with fewer than two figures.</summary>
    public RoundSpread? AsFound { get; init; }

    /// <summary>How the places lie as left; null with fewer than two figures.</summary>
    public RoundSpread? AsLeft { get; init; }

    /// <summary>Rounds that do not count, because the engine drifted while they were read.</summary>
    public IReadOnlyList<ReadingRound> VoidRounds { get; init; } = [];
}
