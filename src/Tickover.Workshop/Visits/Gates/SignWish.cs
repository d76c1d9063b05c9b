namespace Tickover.Workshop.Visits.Gates;

/// <summary>What somebody wishes to put their name to.</summary>
public sealed record SignWish
{
    /// <summary>Key of the act; the same key sent twice is kept once.</summary>
    public required Guid Key { get; init; }

    /// <summary>The gate.</summary>
    public required Gate Gate { get; init; }

    /// <summary>Who; must be one of the people of the workshop.</summary>
    public required Id<Person> Person { get; init; }

    /// <summary>The day by the workshop's calendar.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The check; empty for an override.</summary>
    public string Check { get; init; } = "";

    /// <summary>What was seen; for an override, why.</summary>
    public string Words { get; init; } = "";

    /// <summary>The tablet or program it comes from.</summary>
    public string Device { get; init; } = "";
}
