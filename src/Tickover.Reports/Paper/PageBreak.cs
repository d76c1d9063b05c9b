namespace Tickover.Reports.Paper;

/// <summary>A new page begins.</summary>
internal sealed record PageBreak : Block;
