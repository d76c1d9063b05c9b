namespace Tickover.Workshop.StripDown.Cards;

/// <summary>Rows of a set under one heading.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Rows">The rows in the order of the work.</param>
public sealed record SetGroup(string Heading, IReadOnlyList<SetRow> Rows);
