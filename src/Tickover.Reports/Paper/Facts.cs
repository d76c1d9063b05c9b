namespace Tickover.Reports.Paper;

/// <summary>Names at the left, what they stand for at the right.</summary>
/// <param name="Entries">The lines.</param>
internal sealed record Facts(IReadOnlyList<Fact> Entries) : Block;
