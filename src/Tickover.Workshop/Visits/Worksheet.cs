namespace Tickover.Workshop.Visits;

/// <summary>What was measured on the car for a computation of its own, as a document: the plan of an engine, tanks, walls, a fuel line. A fact; a later one of the same form counts.</summary>
public sealed record Worksheet : RecordItem<Worksheet>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it belongs to.</summary>
    public Stage Stage { get; init; }

    /// <summary>What the document's format says, such as "tickover-plan-1".</summary>
    public string Form { get; init; } = "";

    /// <summary>What it is called, such as the name of the file.</summary>
    public string Name { get; init; } = "";

    /// <summary>The document, as written.</summary>
    public string Document { get; init; } = "";

    /// <summary>Why it was kept anew; empty for a first one.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The day.</summary>
    public DateOnly On { get; init; }
}
