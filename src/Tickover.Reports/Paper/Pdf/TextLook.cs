using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>How a text is set.</summary>
/// <param name="Size">Type size, pt.</param>
/// <param name="Lead">From baseline to baseline, pt.</param>
internal sealed record TextLook(double Size, double Lead)
{
    // Ascent and depth of Noto Sans as parts of its size, from its table hhea
    private const double Ascent = 1.069;
    private const double Depth = 0.293;

    internal Paint Paint { get; init; } = Paint.Ink;

    /// <summary>Whether all of it is bold.</summary>
    internal bool Bold { get; init; }

    /// <summary>From the top of a line to its baseline, pt.</summary>
    internal double Baseline => (Lead - (Ascent + Depth) * Size) / 2 + Ascent * Size;
}
