namespace Tickover.Reports.Paper.Pdf;

/// <summary>A piece of a page that is never torn: a line or two of text, a row of a table, a picture.</summary>
/// <param name="Height">Height, pt.</param>
/// <param name="Draw">Draws it with its top left corner at a place.</param>
internal sealed record Piece(double Height, Action<PageCanvas, double, double> Draw)
{
    /// <summary>Room above it, pt; none at the top of a page.</summary>
    internal double Before { get; init; }

    /// <summary>Whether the next piece has to stand on the same page.</summary>
    internal bool WithNext { get; init; }

    /// <summary>Whether a new page begins with it.</summary>
    internal bool NewPage { get; init; }

    /// <summary>What is repeated above it where a page begins with it: the head of a table.</summary>
    internal Piece? Head { get; init; }

    /// <summary>The heading under which it stands in the list of contents beside the pages; null for none.</summary>
    internal string? Outline { get; init; }
}
