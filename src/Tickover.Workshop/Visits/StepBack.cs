namespace Tickover.Workshop.Visits;

/// <summary>A wish to take back the last act, or to do again what was taken back.</summary>
public sealed record StepBack
{
    /// <summary>Key of this wish; the same key sent twice steps once.</summary>
    public required Guid Key { get; init; }

    /// <summary>Whose acts: those of one tablet or program.</summary>
    public required string Device { get; init; }

    /// <summary>Only acts of this visit; null for the acts that belong to no visit.</summary>
    public Id<Visit>? Visit { get; init; }

    /// <summary>Who wishes it, where that is known.</summary>
    public Id<Person>? Person { get; init; }
}
