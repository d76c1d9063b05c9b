using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>The hatched ground, the outline of the answers, and both axes.</summary>
internal static class MapAxes
{
    private const double TickLength = 6;
    private static readonly Look TickLook = Look.Line(Paint.Ink, 1.5);

    internal static void Ground(IDrawing drawing, MapFrame frame) =>
        drawing.Plate(frame.Plot, 0, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));

    internal static void Outline(IDrawing drawing, IReadOnlyList<Polyline> edges, MapFrame frame)
    {
        drawing.Path(edges, new Look { Stroke = Paint.Ink });
        if (edges.Count == 0)
        {
            drawing.Plate(frame.Plot, 0, new Look { Stroke = Paint.Hair });
        }
    }

    internal static void Draw(IDrawing drawing, MapFrame frame, PictureSize size)
    {
        var full = size == PictureSize.Full;
        var plot = frame.Plot;
        var (low, high) = (Math.Min(frame.Speed.Values.From, frame.Speed.Values.To), Math.Max(frame.Speed.Values.From, frame.Speed.Values.To));
        var lettering = new Lettering { Size = full ? 15 : 14 };
        foreach (var rpm in Ticks.Nice(low, high, full ? 8 : 4))
        {
            var x = frame.Speed.ToPlace(rpm);
            drawing.Line(new ChartPoint(x, plot.Bottom), new ChartPoint(x, plot.Bottom + TickLength), TickLook);
            drawing.Text(Shown.Speed(rpm), new ChartPoint(x, plot.Bottom + 23), lettering);
        }

        foreach (var opening in Ticks.ForOpening(frame.Opening, full ? 26 : 22))
        {
            var y = frame.Opening.ToPlace(opening);
            drawing.Line(new ChartPoint(plot.Left - TickLength, y), new ChartPoint(plot.Left, y), TickLook);
            drawing.Text(Shown.Opening(opening), new ChartPoint(plot.Left - 10, y + 5), lettering with { Anchor = Anchor.End });
        }

        var quiet = lettering with { Paint = Paint.Ink2 };
        drawing.Text("throttle open", new ChartPoint(2, plot.Top - 10), quiet with { Anchor = Anchor.Start });
        drawing.Text("engine speed, rpm", new ChartPoint(plot.Centre.X, plot.Bottom + 44), quiet);
    }
}
