using PdfSharp.Drawing;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Draws pictures on a page as lines and areas, never as pixels.</summary>
/// <param name="page">The page.</param>
/// <param name="fonts">Fonts of the document.</param>
/// <param name="scale">Points to a drawing unit.</param>
/// <param name="x">Where the drawing's origin lies on the page, pt.</param>
/// <param name="y">Where the drawing's origin lies on the page, pt.</param>
internal sealed class PdfDrawing(XGraphics page, FontRack fonts, double scale, double x, double y) : IDrawing
{
    /// <summary>Width of the theme's stroke on paper, drawing units.</summary>
    private const double ThemeStroke = 1.5;

    public void Path(IEnumerable<Polyline> lines, Look look)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        var any = false;
        foreach (var line in lines.Where(l => l.Points.Count > 1))
        {
            path.StartFigure();
            path.AddLines([.. line.Points.Select(On)]);
            if (line.Closed)
            {
                path.CloseFigure();
            }

            any = true;
        }

        if (!any)
        {
            return;
        }

        if (look.Fill is { Kind: PaintKind.Hatch } hatch)
        {
            PdfHatch.Fill(page, path, hatch, scale);
        }
        else if (look.Fill is { } fill)
        {
            page.DrawPath(PdfInk.Brush(fill, look.Opacity), path);
        }

        if (look.Stroke is not null)
        {
            page.DrawPath(Pen(look), path);
        }
    }

    public void Line(ChartPoint from, ChartPoint to, Look look) => Path([new Polyline([from, to], Closed: false)], look);

    public void Circle(ChartPoint centre, double radius, Look look)
    {
        var (at, size) = (On(new ChartPoint(centre.X - radius, centre.Y - radius)), 2 * radius * scale);
        if (look.Fill is { Kind: not PaintKind.Hatch } fill)
        {
            page.DrawEllipse(PdfInk.Brush(fill, look.Opacity), at.X, at.Y, size, size);
        }

        if (look.Stroke is not null)
        {
            page.DrawEllipse(Pen(look), at.X, at.Y, size, size);
        }
    }

    public void Plate(Box box, double radius, Look look)
    {
        if (look.Fill is { Kind: PaintKind.Hatch })
        {
            Path([Polyline.Rectangle(box)], look);
            return;
        }

        var (at, width, height, round) = (On(new ChartPoint(box.Left, box.Top)), box.Width * scale, box.Height * scale, 2 * radius * scale);
        if (look.Fill is { } fill)
        {
            page.DrawRoundedRectangle(PdfInk.Brush(fill, look.Opacity), at.X, at.Y, width, height, round, round);
        }

        if (look.Stroke is not null)
        {
            page.DrawRoundedRectangle(Pen(look), at.X, at.Y, width, height, round, round);
        }
    }

    public void Text(string text, ChartPoint at, Lettering lettering)
    {
        var look = new TextLook(lettering.Size * scale, lettering.Size * scale) { Bold = lettering.Bold, Paint = lettering.Paint };
        var line = new Setter().Lines(Prose.Of(text), look, double.MaxValue)[0];
        var place = On(at);
        var left = place.X - line.Width * lettering.Anchor switch { Anchor.Start => 0, Anchor.Middle => 0.5, _ => 1 };
        if (lettering.Halo is { } halo)
        {
            // Letters drawn twice would be found twice, so a plate parts them from what lies below
            page.DrawRectangle(PdfInk.Brush(halo, opacity: 0.8), left - scale, place.Y - look.Size * 0.8, line.Width + 2 * scale, look.Size);
        }

        foreach (var part in line.Parts)
        {
            page.DrawString(part.Text, fonts.Font(part.Face, look.Size), PdfInk.Brush(look.Paint), left + part.X, place.Y, XStringFormats.BaseLineLeft);
        }
    }

    /// <summary>Nothing: paper is not tapped.</summary>
    public void MarksHere()
    {
    }

    public IDisposable ClippedTo(IReadOnlyList<Polyline> areas)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var area in areas)
        {
            path.AddPolygon([.. area.Points.Select(On)]);
        }

        var state = page.Save();
        page.IntersectClip(path);
        return new Ending(() => page.Restore(state));
    }

    /// <summary>Nothing: paper is not tapped.</summary>
    public IDisposable Part(PartMark mark) => new Ending(() => { });

    private XPoint On(ChartPoint point) => new(x + point.X * scale, y + point.Y * scale);

    private XPen Pen(Look look)
    {
        var pen = PdfInk.Pen(look.Stroke!.Value, (look.Width > 0 ? look.Width : ThemeStroke) * scale, look.Opacity);
        if (look.Dashes is var (dash, gap))
        {
            // The library counts dashes in widths of the line
            pen.DashPattern = [dash * scale / pen.Width, gap * scale / pen.Width];
        }

        return pen;
    }

    private sealed class Ending(Action end) : IDisposable
    {
        public void Dispose() => end();
    }
}
