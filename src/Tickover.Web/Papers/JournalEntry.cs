namespace Tickover.Web.Papers;

/// <summary>What an act did to one item, in plain words.</summary>
/// <param name="Heading">The item and what became of it, such as "Finding, new".</param>
/// <param name="Fields">The fields that changed.</param>
public sealed record JournalEntry(string Heading, IReadOnlyList<JournalField> Fields);
