using Tickover.Reports.Fonts;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Letters of one typeface on one line.</summary>
/// <param name="Text">The letters, all of them in the typeface.</param>
/// <param name="Face">The typeface.</param>
/// <param name="X">From the line's beginning, pt.</param>
/// <param name="Width">Width, pt.</param>
internal sealed record Glyphs(string Text, Typeface Face, double X, double Width)
{
    /// <summary>A severity's mark instead of letters.</summary>
    internal Severity? Mark { get; init; }

    /// <summary>The severity whose colour the letters have.</summary>
    internal Severity? Colour { get; init; }
}
