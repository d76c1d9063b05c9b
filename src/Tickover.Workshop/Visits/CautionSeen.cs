namespace Tickover.Workshop.Visits;

/// <summary>That somebody was shown a caution and confirmed it before the step. A fact.</summary>
public sealed record CautionSeen : RecordItem<CautionSeen>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The caution, by its key.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Who confirmed it, where that is known.</summary>
    public Id<Person>? Person { get; init; }
}
