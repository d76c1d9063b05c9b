namespace Tickover.Reports.Charts;

/// <summary>How a text looks and stands.</summary>
internal sealed record Lettering
{
    /// <summary>Smallest size a screen may show, px.</summary>
    internal const double SmallestSize = 14;

    /// <summary>Size, drawing units.</summary>
    internal double Size { get; init; } = SmallestSize;

    /// <summary>Bold or not.</summary>
    internal bool Bold { get; init; }

    /// <summary>Which end stands at the point given.</summary>
    internal Anchor Anchor { get; init; } = Anchor.Middle;

    /// <summary>Colour of the letters.</summary>
    internal Paint Paint { get; init; } = Paint.Ink;

    /// <summary>Colour of an edge round the letters that parts them from what lies below; null for none.</summary>
    internal Paint? Halo { get; init; }

    /// <summary>Estimated width of a text in drawing units, a little on the generous side.</summary>
    /// <remarks>Mean advance of the product's typeface measured on its own labels: 0.54 em, bold 0.58 em.</remarks>
    internal double WidthOf(string text) => text.Length * Size * (Bold ? 0.58 : 0.54);
}
