namespace Tickover.Workshop.Visits.Measures;

/// <summary>What came of reading a typed text as a measure.</summary>
public sealed record TypedReading
{
    /// <summary>The text to keep: as typed, with a decimal point and its unit; empty where it was refused.</summary>
    public string Typed { get; init; } = "";

    /// <summary>The value in the measure's SI unit, finite; null for words and where it was refused.</summary>
    public double? Si { get; init; }

    /// <summary>What is wrong and what to write; empty where it was read.</summary>
    public string Problem { get; init; } = "";

    /// <summary>What to ask once, because the value is outside the usual range; empty where it is within.</summary>
    public string Question { get; init; } = "";

    /// <summary>Whether it was read.</summary>
    public bool IsRead => Problem.Length == 0;

    internal static TypedReading Refused(string problem) => new() { Problem = problem };
}
