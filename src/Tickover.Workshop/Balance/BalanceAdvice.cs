namespace Tickover.Workshop.Balance;

/// <summary>What the readings so far say and what to do next.</summary>
public sealed record BalanceAdvice
{
    /// <summary>Every round in the order read.</summary>
    public required IReadOnlyList<RoundAccount> Rounds { get; init; }

    /// <summary>The last round with air of every barrel; null before there is one.</summary>
    public RoundAccount? Last => Rounds.LastOrDefault(r => r.IsWhole && r.Mean > 0);

    /// <summary>What to do next.</summary>
    public required NextMove Next { get; init; }

    /// <summary>Whether all barrels pass alike air, at idle and off idle, or as near as the screws go, so that mixture and speed come next.</summary>
    public bool IsBalanced { get; init; }

    /// <summary>What may be wrong, likeliest first; empty where screws explain all.</summary>
    public IReadOnlyList<LikelyCause> Causes { get; init; } = [];

    /// <summary>The chance that nothing is wrong but screws, 0 to 1.</summary>
    public double OnlyScrews { get; init; } = 1;

    /// <summary>Standard deviation of one air reading as this meter on this car has shown, kg/h.</summary>
    public double Repeatability { get; init; }

    /// <summary>Gains as learned so far.</summary>
    public IReadOnlyList<LearnedGain> Gains { get; init; } = [];

    /// <summary>Screws that did not do what they should.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Where the work stands, in one sentence.</summary>
    public required string Said { get; init; }

    /// <summary>Weighs up a book.</summary>
    /// <param name="book">The balancing so far.</param>
    /// <returns>The advice.</returns>
    public static BalanceAdvice Of(BalanceBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new Advising.Adviser(book).Advise();
    }
}
