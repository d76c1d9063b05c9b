namespace Tickover.Workshop.Visits.Gates;

/// <summary>One check of a gate: what must be so, how it is looked at, and what undoes it.</summary>
public sealed record GateCheck
{
    /// <summary>Key it is signed under; unique over all gates.</summary>
    public required string Key { get; init; }

    /// <summary>The gate.</summary>
    public required Gate Gate { get; init; }

    /// <summary>What must be so, as one reads it beside the box: "No leak anywhere, pump on for 5 min".</summary>
    public required string Words { get; init; }

    /// <summary>The same as an act, after "Sign": "the leak check".</summary>
    public required string Name { get; init; }

    /// <summary>How to look.</summary>
    public required string LookFor { get; init; }

    /// <summary>What to write down as seen; words to follow, never filled in for anyone.</summary>
    public required string Seen { get; init; }

    /// <summary>What can happen where it is left out, in one sentence.</summary>
    public required string Otherwise { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What makes it count no longer.</summary>
    public required Disturbance StaleAfter { get; init; }
}
