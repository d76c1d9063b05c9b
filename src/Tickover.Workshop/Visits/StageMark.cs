namespace Tickover.Workshop.Visits;

/// <summary>How far one stage of a visit has got.</summary>
public sealed record StageMark : RecordItem<StageMark>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage.</summary>
    public Stage Stage { get; init; }

    /// <summary>How far it has got.</summary>
    public StageState State { get; init; }

    /// <summary>The day it was begun.</summary>
    public DateOnly? BegunOn { get; init; }

    /// <summary>The day it was done, or found not to be needed.</summary>
    public DateOnly? EndedOn { get; init; }

    /// <summary>Why it is not needed, or what is left.</summary>
    public string Note { get; init; } = "";
}
