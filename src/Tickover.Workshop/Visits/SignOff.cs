namespace Tickover.Workshop.Visits;

/// <summary>A check of a gate, signed; or the gate overridden, with a reason and a name. A fact, never changed.</summary>
public sealed record SignOff : RecordItem<SignOff>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The gate.</summary>
    public Gate Gate { get; init; }

    /// <summary>The check signed, by its key; empty where the gate is overridden.</summary>
    public string Check { get; init; } = "";

    /// <summary>Who signed.</summary>
    public Id<Person> Person { get; init; }

    /// <summary>What was seen, such as "0.24 bar, dry by torch and paper".</summary>
    public string Seen { get; init; } = "";

    /// <summary>Why the gate is overridden; empty for a check.</summary>
    public string Override { get; init; } = "";

    /// <summary>The day it was signed, by the workshop's calendar.</summary>
    public DateOnly On { get; init; }
}
