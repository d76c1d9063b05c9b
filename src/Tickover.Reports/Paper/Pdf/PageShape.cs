using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>A sheet and the room on it, pt.</summary>
internal sealed record PageShape(double Width, double Height)
{
    /// <summary>Free edge all round: printers in offices leave at least 5 mm, a binder wants more.</summary>
    internal const double Margin = 42.5;

    /// <summary>Height kept for the foot.</summary>
    internal const double Foot = 26;

    private const double PointsPerMillimetre = 72 / 25.4;

    internal double TextWidth => Width - 2 * Margin;

    internal double TextHeight => Height - 2 * Margin - Foot;

    internal static PageShape Of(PaperSize size) => size == PaperSize.Letter
        ? new PageShape(8.5 * 72, 11 * 72)
        : new PageShape(210 * PointsPerMillimetre, 297 * PointsPerMillimetre);
}
