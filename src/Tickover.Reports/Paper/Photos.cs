namespace Tickover.Reports.Paper;

/// <summary>Photographs, two side by side.</summary>
internal sealed record Photos(IReadOnlyList<Photo> Entries) : Block;
