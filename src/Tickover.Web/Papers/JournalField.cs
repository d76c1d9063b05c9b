namespace Tickover.Web.Papers;

/// <summary>One field of an item before and after an act, in plain words.</summary>
/// <param name="Label">The field.</param>
/// <param name="Before">What stood there; empty where nothing did.</param>
/// <param name="After">What stands there; empty where nothing does.</param>
public sealed record JournalField(string Label, string Before, string After);
