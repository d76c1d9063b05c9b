namespace Tickover.Reports.Paper;

/// <summary>What nobody may miss, in a frame.</summary>
/// <param name="Title">Heading of level 2 inside the frame.</param>
/// <param name="Blocks">What it says.</param>
internal sealed record Callout(string Title, IReadOnlyList<Block> Blocks) : Block;
