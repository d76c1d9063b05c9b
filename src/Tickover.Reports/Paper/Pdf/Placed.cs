namespace Tickover.Reports.Paper.Pdf;

/// <summary>A piece in its place on a page.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Top">Its top edge, pt from the top of the room for text.</param>
internal sealed record Placed(Piece Piece, double Top);
