namespace Tickover.Workshop.Visits;

/// <summary>A signature under the account of a visit. A fact.</summary>
public sealed record Signature : RecordItem<Signature>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>Who signed.</summary>
    public Id<Person> Person { get; init; }

    /// <summary>The day.</summary>
    public DateOnly On { get; init; }

    /// <summary>What the signature stands for, such as "Work done and account written".</summary>
    public string For { get; init; } = "";
}
