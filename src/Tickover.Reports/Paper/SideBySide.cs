namespace Tickover.Reports.Paper;

/// <summary>Two things that belong beside each other; below each other where the paper or the screen is too small.</summary>
internal sealed record SideBySide(IReadOnlyList<Block> Left, IReadOnlyList<Block> Right) : Block;
