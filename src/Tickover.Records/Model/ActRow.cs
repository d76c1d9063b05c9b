using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>An act as the journal keeps it.</summary>
internal sealed class ActRow
{
    /// <summary>Counted up, one writer at a time.</summary>
    public long Number { get; init; }

    /// <summary>The sender's key; unique, so nothing is kept twice.</summary>
    public Guid Key { get; init; }

    /// <summary>What sort of act.</summary>
    public ActKind Kind { get; init; }

    /// <summary>What was done.</summary>
    public string Words { get; init; } = "";

    /// <summary>When, by the server's clock, in UTC.</summary>
    public DateTimeOffset At { get; init; }

    /// <summary>Who.</summary>
    public Id<Person>? Person { get; init; }

    /// <summary>Tablet or program.</summary>
    public string Device { get; init; } = "";

    /// <summary>The visit.</summary>
    public Id<Visit>? Visit { get; init; }

    /// <summary>The act it took back or did again.</summary>
    public long? Undoes { get; init; }

    /// <summary>The act that took it back.</summary>
    public long? UndoneBy { get; set; }
}
