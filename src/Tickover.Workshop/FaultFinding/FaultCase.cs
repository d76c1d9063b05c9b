namespace Tickover.Workshop.FaultFinding;

/// <summary>What is known of one car's trouble. Keys are those of the knowledge it is put to.</summary>
public sealed record FaultCase
{
    /// <summary>Keys of the symptoms, one or more.</summary>
    public IReadOnlyList<string> Symptoms { get; init; } = [];

    /// <summary>Keys of causes that have been ruled out.</summary>
    public IReadOnlyList<string> RuledOut { get; init; } = [];

    /// <summary>Answers so far, in order.</summary>
    public IReadOnlyList<FaultGiven> Answers { get; init; } = [];

    /// <summary>What the car's record adds.</summary>
    public IReadOnlyList<FaultEvidence> Record { get; init; } = [];
}
