namespace Tickover.Reports.Paper;

/// <summary>Blocks that stay on one page where one page can hold them.</summary>
internal sealed record Together(IReadOnlyList<Block> Blocks) : Block;
