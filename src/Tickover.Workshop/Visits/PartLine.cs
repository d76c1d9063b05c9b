namespace Tickover.Workshop.Visits;

/// <summary>A part for this visit, from the order to the car.</summary>
public sealed record PartLine : RecordItem<PartLine>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage that needs it.</summary>
    public Stage Stage { get; init; }

    /// <summary>What it is.</summary>
    public string What { get; init; } = "";

    /// <summary>The maker's reference or the standard and date on it, as on the part.</summary>
    public string Reference { get; init; } = "";

    /// <summary>How many, or how long, as said: "2", "1.5 m".</summary>
    public string Quantity { get; init; } = "1";

    /// <summary>Where it is.</summary>
    public PartState State { get; init; }

    /// <summary>The day it was ordered.</summary>
    public DateOnly? OrderedOn { get; init; }

    /// <summary>The day it was promised for.</summary>
    public DateOnly? PromisedFor { get; init; }

    /// <summary>The day it was fitted.</summary>
    public DateOnly? FittedOn { get; init; }

    /// <summary>Price of all of them, in the workshop's money.</summary>
    public decimal? Price { get; init; }

    /// <summary>What became of the old part, such as "bag 3, given back".</summary>
    public string OldPart { get; init; } = "";
}
