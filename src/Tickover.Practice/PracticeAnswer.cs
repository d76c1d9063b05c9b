using Tickover.Workshop.Balance;

namespace Tickover.Practice;

/// <summary>What came of one act on the practice engine: what was done or read, or why not.</summary>
public sealed record PracticeAnswer
{
    /// <summary>Whether it was done.</summary>
    public required bool Done { get; init; }

    /// <summary>One sentence: what happened, or why not and what to do.</summary>
    public required string Words { get; init; }

    /// <summary>The step as the record keeps it; null where nothing was done.</summary>
    public BalanceStep? Step { get; init; }

    /// <summary>The reading, where one barrel alone was read; null otherwise.</summary>
    public BarrelReading? Reading { get; init; }

    /// <summary>Whether a fault named was there; null where none was named.</summary>
    public bool? WasThere => (Step as CheckedFor)?.Found;

    /// <summary>The score at the end; null before.</summary>
    public PracticeScore? Score { get; init; }

    internal static PracticeAnswer No(string words) => new() { Done = false, Words = words };
}
