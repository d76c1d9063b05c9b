namespace Tickover.Workshop.Visits;

/// <summary>Something a search found.</summary>
/// <param name="Kind">Kind of the item, such as "Finding".</param>
/// <param name="Key">The item.</param>
/// <param name="Car">The car it belongs to; null where it belongs to none.</param>
/// <param name="Visit">The visit it belongs to; null where it belongs to none.</param>
/// <param name="Text">The words in which the search found something.</param>
public sealed record FoundItem(string Kind, Guid Key, Id<CustomerCar>? Car, Id<Visit>? Visit, string Text);
