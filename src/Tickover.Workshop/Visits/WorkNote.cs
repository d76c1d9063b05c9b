namespace Tickover.Workshop.Visits;

/// <summary>What was done, changed, left or advised, in words.</summary>
public sealed record WorkNote : RecordItem<WorkNote>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it belongs to.</summary>
    public Stage Stage { get; init; }

    /// <summary>Under which heading it stands.</summary>
    public WorkKind Kind { get; init; }

    /// <summary>What.</summary>
    public string What { get; init; } = "";

    /// <summary>Why; for work not done, the consequence.</summary>
    public string Why { get; init; } = "";

    /// <summary>How to reverse a change; for work not done, how urgent it is.</summary>
    public string Further { get; init; } = "";

    /// <summary>The day.</summary>
    public DateOnly On { get; init; }
}
