namespace Tickover.Reports.Paper;

/// <summary>A heading; it stays with what follows it.</summary>
/// <param name="Level">2 for a part of the document, 3 below it.</param>
/// <param name="Text">The words.</param>
internal sealed record Heading(int Level, string Text) : Block;
