namespace Tickover.Web.Papers;

/// <summary>One place a search found.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The words found.</param>
/// <param name="Address">Its page.</param>
public sealed record FindHit(string Kind, string Text, string Address);
