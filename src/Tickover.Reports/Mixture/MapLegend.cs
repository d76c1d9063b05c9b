using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>What colour, edge and dashes mean.</summary>
internal static class MapLegend
{
    private const int StepCount = 48;

    internal static void Draw(IDrawing drawing, MapFrame frame, LambdaScale scale, MixtureView view)
    {
        var full = view.Size == PictureSize.Full;
        var top = frame.Plot.Bottom + (full ? 64 : 56);
        var bar = full ? new Box(86, top, 300, 16) : new Box(58, top, 262, 14);
        drawing.Text("λ rich", new ChartPoint(bar.Left - 10, top + 13), new Lettering { Size = 15, Anchor = Anchor.End });
        drawing.Text("lean", new ChartPoint(bar.Right + 10, top + 13), new Lettering { Size = 15, Anchor = Anchor.Start });
        Bar(drawing, bar, scale);
        if (full)
        {
            Lines(drawing, new ChartPoint(486, top - 8));
            Points(drawing, new ChartPoint(690, top - 8), view);
        }
    }

    /// <summary>The legend of a difference.</summary>
    internal static void DrawChange(IDrawing drawing, MapFrame frame, double reach, PictureSize size)
    {
        var full = size == PictureSize.Full;
        var top = frame.Plot.Bottom + (full ? 64 : 56);
        var bar = full ? new Box(96, top, 300, 16) : new Box(58, top, 240, 14);
        drawing.Text("richer", new ChartPoint(bar.Left - 10, top + 13), new Lettering { Size = full ? 15 : 14, Anchor = Anchor.End });
        drawing.Text("leaner", new ChartPoint(bar.Right + 10, top + 13), new Lettering { Size = full ? 15 : 14, Anchor = Anchor.Start });
        Steps(drawing, bar, part => Diverging.PaintAt(2 * part - 1));
        foreach (var tick in Ticks.Nice(-reach, reach, full ? 7 : 5))
        {
            Tick(drawing, bar, (tick + reach) / (2 * reach), Shown.LambdaDifference(tick));
        }

        if (full)
        {
            var line = new ChartPoint(492, top + 8);
            drawing.Line(line, line with { X = line.X + 40 }, Look.Line(Paint.Ink, 3) with { Dashes = (2, 4) });
            drawing.Text("too lean as fitted", new ChartPoint(542, top + 13), new Lettering { Size = 15, Anchor = Anchor.Start });
        }
    }

    private static void Bar(IDrawing drawing, Box bar, LambdaScale scale)
    {
        Steps(drawing, bar, Cividis.PaintAt);
        foreach (var tick in Ticks.Nice(scale.Richest, scale.Leanest, 7))
        {
            Tick(drawing, bar, scale.PartOf(tick), Shown.Lambda(tick));
        }
    }

    private static void Steps(IDrawing drawing, Box bar, Func<double, Paint> paint)
    {
        for (var step = 0; step < StepCount; step++)
        {
            // Each step runs to the bar's end under the next, so that no seam shows
            var left = bar.Left + bar.Width * step / StepCount;
            drawing.Plate(bar with { Left = left, Width = bar.Right - left }, 0, Look.Filled(paint((double)step / (StepCount - 1))));
        }

        drawing.Plate(bar, 0, Look.Line(Paint.Ink, 1));
    }

    private static void Tick(IDrawing drawing, Box bar, double part, string figure)
    {
        var x = bar.Left + bar.Width * part;
        drawing.Line(new ChartPoint(x, bar.Bottom), new ChartPoint(x, bar.Bottom + 5), Look.Line(Paint.Ink, 1.5));
        drawing.Text(figure, new ChartPoint(x, bar.Bottom + 20), new Lettering { Size = bar.Height < 16 ? 14 : 15 });
    }

    private static void Lines(IDrawing drawing, ChartPoint at)
    {
        var ground = new Box(at.X, at.Y, 44, 46);
        drawing.Plate(ground, 4, Look.Filled(Cividis.PaintAt(0.5)));
        Polyline Wave(double y) => new(
            [.. Enumerable.Range(0, 12).Select(k => new ChartPoint(at.X + 2 + 40.0 * k / 11, y + 3 * Math.Sin(k * 0.57)))], Closed: false);
        drawing.Path([Wave(at.Y + 12)], Look.Line(Paint.White, 6.5));
        drawing.Path([Wave(at.Y + 12)], Look.Line(Paint.Black, 3));
        var (from, to) = (new ChartPoint(at.X + 2, at.Y + 35), new ChartPoint(at.X + 42, at.Y + 35));
        drawing.Line(from, to, Look.Line(Paint.Black, 4.5) with { Opacity = 0.6 });
        drawing.Line(from, to, Look.Line(Paint.White, 2.5) with { Dashes = (9, 6) });
        var lettering = new Lettering { Size = 15, Anchor = Anchor.Start };
        drawing.Text("edge of target", new ChartPoint(at.X + 52, at.Y + 17), lettering);
        drawing.Text("circuits hand over", new ChartPoint(at.X + 52, at.Y + 40), lettering);
    }

    private static void Points(IDrawing drawing, ChartPoint at, MixtureView view)
    {
        if (view.Measured.Count == 0)
        {
            return;
        }

        var (least, most) = (view.Measured.Min(p => p.Count), view.Measured.Max(p => p.Count));
        drawing.Circle(new ChartPoint(at.X + 6, at.Y + 23), MapMarks.RadiusFor(least), Look.Line(Paint.Ink, 1.5));
        drawing.Circle(new ChartPoint(at.X + 30, at.Y + 23), MapMarks.RadiusFor(most), Look.Line(Paint.Ink, 1.5));
        var lettering = new Lettering { Size = 14, Anchor = Anchor.End };
        drawing.Text(least == most ? $"{least}" : $"{least}–{most}", new ChartPoint(772, at.Y + 18), lettering);
        drawing.Text("read", new ChartPoint(772, at.Y + 36), lettering);
    }
}
