namespace Tickover.Workshop.Visits;

/// <summary>One thing a person did, kept whole or not at all: one or more items in their new state.</summary>
public sealed record Act
{
    /// <summary>Chosen by whoever sends it; the same key sent twice is kept once.</summary>
    public required Guid Key { get; init; }

    /// <summary>The items as they should be. <see cref="RecordItem.Version"/> is 0 for a new one, else the version that was looked at.</summary>
    public required IReadOnlyList<RecordItem> Items { get; init; }

    /// <summary>What was done, in words that Undo can repeat: "barrel 4, 3.9 kg/h".</summary>
    public required string Words { get; init; }

    /// <summary>The visit it was done in; null for the workshop's own things and for cars.</summary>
    public Id<Visit>? Visit { get; init; }

    /// <summary>Who did it, where that is known.</summary>
    public Id<Person>? Person { get; init; }

    /// <summary>The tablet or program it came from; Undo steps back through the acts of one device.</summary>
    public string Device { get; init; } = "";
}
