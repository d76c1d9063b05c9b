namespace Tickover.Workshop.Visits;

/// <summary>Time somebody spent on this visit.</summary>
public sealed record TimeLine : RecordItem<TimeLine>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it went into.</summary>
    public Stage Stage { get; init; }

    /// <summary>Whose time.</summary>
    public Id<Person>? Person { get; init; }

    /// <summary>The day.</summary>
    public DateOnly On { get; init; }

    /// <summary>Minutes, more than 0.</summary>
    public int Minutes { get; init; }

    /// <summary>What was done.</summary>
    public string What { get; init; } = "";
}
