namespace Tickover.Web.Papers;

/// <summary>What a search found of one car, or of none.</summary>
/// <param name="Heading">The car.</param>
/// <param name="Address">Its history; empty where there is no car.</param>
/// <param name="Hits">What was found.</param>
public sealed record FindGroup(string Heading, string Address, IReadOnlyList<FindHit> Hits);
