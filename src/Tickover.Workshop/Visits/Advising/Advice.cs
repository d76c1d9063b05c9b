namespace Tickover.Workshop.Visits.Advising;

/// <summary>One thing to do next on a visit, in the words said aloud.</summary>
public sealed record Advice
{
    /// <summary>What to do, verb first, without a full stop: "Sign the ventilation, then start the engine".</summary>
    public required string Sentence { get; init; }

    /// <summary>Why, in one sentence.</summary>
    public required string Why { get; init; }

    /// <summary>What it rests on, line by line.</summary>
    public IReadOnlyList<string> Evidence { get; init; } = [];

    /// <summary>How it stands among the rest.</summary>
    public required AdviceRank Rank { get; init; }

    /// <summary>Where to do it.</summary>
    public required AdvicePlace Place { get; init; }

    /// <summary>Minutes it is likely to take, common practice; null where nobody knows.</summary>
    public int? Minutes { get; init; }
}
