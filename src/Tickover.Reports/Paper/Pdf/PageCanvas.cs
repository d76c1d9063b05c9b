using PdfSharp.Drawing;
using Tickover.Reports.Charts;
using Tickover.Reports.Fonts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Draws on one page, in pt from its top left corner.</summary>
internal sealed class PageCanvas(XGraphics page, FontRack fonts)
{
    internal void Line(SetLine line, TextLook look, double x, double top)
    {
        foreach (var part in line.Parts)
        {
            var left = x + part.X;
            if (part.Mark is { } mark)
            {
                var side = look.Size * 0.82;
                SeverityMark.Draw(Drawing(1, 0, 0), mark, new Box(left, top + look.Baseline - look.Size * 0.76, side, side));
                continue;
            }

            var paint = part.Colour is { } colour ? SeverityMark.Paint(colour) : look.Paint;
            page.DrawString(part.Text, fonts.Font(part.Face, look.Size), PdfInk.Brush(paint), left, top + look.Baseline, XStringFormats.BaseLineLeft);
        }
    }

    internal void Lines(IReadOnlyList<SetLine> lines, TextLook look, double x, double top)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            Line(lines[i], look, x, top + i * look.Lead);
        }
    }

    /// <summary>A level line.</summary>
    internal void Rule(double x, double y, double length, double width, Paint paint) =>
        page.DrawLine(PdfInk.Pen(paint, width), x, y, x + length, y);

    /// <summary>An upright line.</summary>
    internal void Bar(double x, double y, double length, double width, Paint paint) =>
        page.DrawLine(PdfInk.Pen(paint, width), x, y, x, y + length);

    internal void Frame(Box box, double radius, double width, Paint paint) =>
        page.DrawRoundedRectangle(PdfInk.Pen(paint, width), box.Left, box.Top, box.Width, box.Height, 2 * radius, 2 * radius);

    /// <summary>A backend for pictures, their origin at a place and their units scaled.</summary>
    internal PdfDrawing Drawing(double scale, double x, double y) => new(page, fonts, scale, x, y);

    /// <summary>A photograph in a box of its own proportions; a crossed box that says so where the picture cannot be read.</summary>
    internal void Photo(byte[]? jpeg, Box box)
    {
        if (jpeg is null || !Drawn(jpeg, box))
        {
            Frame(box, 0, 0.75, Paint.MetalEdge);
            page.DrawString(
                "The picture could not be read.", fonts.Font(Typeface.Regular, TypeScale.Smallest + 1), PdfInk.Brush(Paint.Ink2),
                box.Centre.X, box.Centre.Y, XStringFormats.BaseLineCenter);
        }
    }

    /// <summary>An address that can be followed on a screen.</summary>
    internal void Link(Box box, string address)
    {
        var corner = page.Transformer.WorldToDefaultPage(new XRect(box.Left, box.Top, box.Width, box.Height));
        page.PdfPage?.AddWebLink(new PdfSharp.Pdf.PdfRectangle(corner), address);
    }

    private bool Drawn(byte[] jpeg, Box box)
    {
        try
        {
            using var stream = new MemoryStream(jpeg, writable: false);
            using var image = XImage.FromStream(stream);
            page.DrawImage(image, box.Left, box.Top, box.Width, box.Height);
            return true;
        }
        catch (InvalidOperationException)
        {
            // The library's word for a file it does not understand
            return false;
        }
    }
}
