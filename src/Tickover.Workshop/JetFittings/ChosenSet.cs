using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.JetFittings;

/// <summary>A set that somebody fits, and why.</summary>
public sealed record ChosenSet
{
    /// <summary>The set.</summary>
    public required JetProposal Proposal { get; init; }

    /// <summary>What was fitted until then, judged alike.</summary>
    public required JetProposal Before { get; init; }

    /// <summary>Which of the sets on offer it is, in words such as "best from the shelf".</summary>
    public required string Choice { get; init; }

    /// <summary>Names of the logs it rests on; empty where it rests on the description alone.</summary>
    public string RestsOn { get; init; } = "";

    /// <summary>The day, by the workshop's calendar.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The moment.</summary>
    public required DateTimeOffset Now { get; init; }
}
