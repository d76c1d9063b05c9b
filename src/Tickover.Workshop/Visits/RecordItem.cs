using System.Text.Json.Serialization;

namespace Tickover.Workshop.Visits;

/// <summary>Anything the workshop's record keeps. What is set by the record itself is marked so.</summary>
public abstract record RecordItem
{
    /// <summary>The item's number, whatever its kind.</summary>
    [JsonIgnore]
    public abstract Guid Key { get; }

    /// <summary>0 for a new item; else the version that was looked at before it was changed. The record counts it up.</summary>
    public int Version { get; init; }

    /// <summary>Taken off: kept, shown struck through or not at all, and restorable.</summary>
    public bool Removed { get; init; }

    /// <summary>Number of the act that first kept the item. Set by the record; it orders items whatever the clock said.</summary>
    public long Kept { get; init; }

    /// <summary>Number of the last act on the item. Set by the record.</summary>
    public long Changed { get; init; }

    /// <summary>When the item was first kept, by the server's clock. Set by the record.</summary>
    public DateTimeOffset KeptAt { get; init; }

    /// <summary>Who first kept the item, where that is known. Set by the record.</summary>
    public Id<Person>? KeptBy { get; init; }
}
