namespace Tickover.Workshop.Visits;

/// <summary>Something found on the car, and what was decided about it.</summary>
public sealed record Finding : RecordItem<Finding>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it was found in.</summary>
    public Stage Stage { get; init; }

    /// <summary>Where on the car, in words.</summary>
    public string Where { get; init; } = "";

    /// <summary>What was found, in a few words an owner understands.</summary>
    public string What { get; init; } = "";

    /// <summary>More of it: figures, how it was seen.</summary>
    public string Detail { get; init; } = "";

    /// <summary>How soon it must be dealt with.</summary>
    public Severity Severity { get; init; }

    /// <summary>What became of it.</summary>
    public FindingState State { get; init; }

    /// <summary>What was decided or done.</summary>
    public string Decision { get; init; } = "";

    /// <summary>Who approved the decision: the owner's name or ours.</summary>
    public string ApprovedBy { get; init; } = "";

    /// <summary>The day it was put right or decided.</summary>
    public DateOnly? SettledOn { get; init; }
}
