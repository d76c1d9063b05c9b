namespace Tickover.Workshop.FaultFinding;

/// <summary>What is known of one car's trouble. Keys are those of the knowledge it is put to.</summary>
public sealed record FaultCase
{
    /// <summary>What it is called; may be empty.</summary>
    public string Name { get; init; } = string.Empty;

    /// <summary>Keys of the symptoms, one or more.</summary>
    public IReadOnlyList<string> Symptoms { get; init; } = [];

    /// <summary>Keys of causes that have been ruled out.</summary>
    public IReadOnlyList<string> RuledOut { get; init; } = [];

    /// <summary>Answers so far, in order.</summary>
    public IReadOnlyList<FaultGiven> Answers { get; init; } = [];

    /// <summary>What the car's record adds.</summary>
    public IReadOnlyList<FaultEvidence> Record { get; init; } = [];

    /// <summary>The case with one more answer.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>The case.</returns>
    public FaultCase With(FaultGiven answer) => this with { Answers = [.. Answers, answer] };

    /// <summary>The case without its last answer.</summary>
    /// <returns>The case; the same where there is none.</returns>
    public FaultCase Undone() => this with { Answers = [.. Answers.SkipLast(1)] };
}
