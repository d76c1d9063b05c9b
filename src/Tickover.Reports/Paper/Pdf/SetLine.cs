namespace Tickover.Reports.Paper.Pdf;

/// <summary>A line of text, set.</summary>
/// <param name="Parts">Its letters from left to right.</param>
/// <param name="Width">Its width, pt.</param>
internal sealed record SetLine(IReadOnlyList<Glyphs> Parts, double Width);
