namespace Tickover.Web.Papers;

/// <summary>An item that was taken off and can be brought back.</summary>
/// <param name="Kind">Kind of the item.</param>
/// <param name="Key">The item.</param>
/// <param name="Version">Its version.</param>
/// <param name="Words">What it is.</param>
public sealed record JournalItem(string Kind, Guid Key, int Version, string Words);
