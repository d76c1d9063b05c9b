using PdfSharp.Drawing;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>The hatches as slanted lines within an area, since the PDF library has no patterns.</summary>
internal static class PdfHatch
{
    internal static void Fill(XGraphics page, XGraphicsPath area, Paint hatch, double scale)
    {
        var (step, width, paint, under) = Enum.Parse<Hatch>(hatch.Name) switch
        {
            Hatch.NoAnswer => (9.0, 2.0, Paint.Hair, (Paint?)null),
            Hatch.Lean => (7.0, 1.4, Paint.Black, null),
            Hatch.Rich => (9.0, 1.2, Paint.White, null),
            _ => (7.0, 1.0, Paint.MetalEdge, Paint.Metal),
        };
        if (under is { } ground)
        {
            page.DrawPath(PdfInk.Brush(ground), area);
        }

        var state = page.Save();
        page.IntersectClip(area);
        var (w, h) = (page.PageSize.Width, page.PageSize.Height);
        var pen = PdfInk.Pen(paint, width * scale);
        var apart = step * scale * Math.Sqrt(2);
        var falls = string.Equals(hatch.Name, nameof(Hatch.Rich), StringComparison.Ordinal);
        for (var at = -h; at < w + h; at += apart)
        {
            page.DrawLine(pen, falls ? at : at + h, 0, falls ? at + h : at, h);
        }

        page.Restore(state);
    }
}
