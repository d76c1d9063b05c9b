namespace Tickover.Workshop.Visits.Measures;

/// <summary>One complete set of readings of a measure, taken one after the other.</summary>
public sealed record ReadingRound
{
    /// <summary>Which one; null for the last readings taken outside of rounds.</summary>
    public required Guid? Round { get; init; }

    /// <summary>What was read.</summary>
    public required MeasureDefinition Measure { get; init; }

    /// <summary>As found, while working or as left.</summary>
    public required Moment Moment { get; init; }

    /// <summary>The reading that holds for each place, in the order taken.</summary>
    public required IReadOnlyList<Reading> Readings { get; init; }

    /// <summary>The first place read again at the end; null where that was not done.</summary>
    public Reading? Again { get; init; }

    /// <summary>How far the first place had moved by the end, in SI; null where it was not read again.</summary>
    public double? MovedSi { get; init; }

    /// <summary>Whether the engine drifted too far for the round to count.</summary>
    public bool IsVoid { get; init; }

    /// <summary>Why the round is void; empty where it is not.</summary>
    public string Why { get; init; } = "";
}
