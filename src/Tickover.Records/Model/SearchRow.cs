using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>The words of an item.</summary>
internal sealed class SearchRow
{
    /// <summary>Kind of the item.</summary>
    public string Kind { get; init; } = "";

    /// <summary>The item.</summary>
    public Guid Key { get; init; }

    /// <summary>The car it belongs to.</summary>
    public Id<CustomerCar>? Car { get; set; }

    /// <summary>The visit it belongs to.</summary>
    public Id<Visit>? Visit { get; set; }

    /// <summary>The words as written.</summary>
    public string Text { get; set; } = "";

    /// <summary>The words in small letters, by which they are found.</summary>
    public string Folded { get; set; } = "";

    /// <summary>Number of the last act on the item.</summary>
    public long Changed { get; set; }
}
