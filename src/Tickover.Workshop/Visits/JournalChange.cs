namespace Tickover.Workshop.Visits;

/// <summary>What an act did to one item.</summary>
/// <param name="Kind">Kind of the item, such as "Finding".</param>
/// <param name="Key">The item.</param>
/// <param name="Before">The item before, as JSON; null where it was new.</param>
/// <param name="After">The item after, as JSON.</param>
public sealed record JournalChange(string Kind, Guid Key, string? Before, string After);
