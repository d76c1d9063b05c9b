using Tickover.Reports.Charts;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Reports.Faults;

/// <summary>The half of the drawing behind the pump: two tanks from behind, gauge, pipe, filter, pump, battery. Figures are places on the paper, px.</summary>
internal static class WhereTank
{
    public const double Width = 366, Height = 250;

    private static readonly Look Edge = new() { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 2 };
    private static readonly Look Wall = Look.Line(Paint.Ink, 2);
    private static readonly Look Pipe = Look.Line(Paint.FuelEdge, 5);
    private static readonly Look Thin = Look.Line(Paint.Ink2, 1.5);

    public static ChartPoint? At(FaultSpot spot) => spot switch
    {
        FaultSpot.Cap => new(34, 82),
        FaultSpot.Vent => new(104, 82),
        FaultSpot.Tank => new(60, 158),
        FaultSpot.Pickup => new(228, 176),
        FaultSpot.CrossPipe => new(136, 206),
        FaultSpot.Sender => new(180, 146),
        FaultSpot.Gauge => new(196, 44),
        FaultSpot.Pipe => new(258, 204),
        FaultSpot.Filter => new(286, 204),
        FaultSpot.Pump => new(334, 204),
        FaultSpot.Return => new(300, 146),
        FaultSpot.Battery => new(308, 54),
        _ => null,
    };

    public static void Draw(SvgDrawing drawing)
    {
        Tanks(drawing);
        Gauge(drawing);
        Line(drawing);
        drawing.Plate(new Box(274, 34, 68, 40), 3, Edge);
        drawing.Plate(new Box(284, 27, 12, 7), 0, Edge);
        drawing.Plate(new Box(320, 27, 12, 7), 0, Edge);
        Name(drawing, "battery", 308, 92);
    }

    private static void Tanks(SvgDrawing drawing)
    {
        foreach (var left in new[] { 16.0, 150.0 })
        {
            drawing.Plate(new Box(left, 116, 104, 84), 10, Edge);
            drawing.Plate(new Box(left + 2, 150, 100, 48), 8, Look.Filled(Paint.Fuel));
        }

        Way(drawing, Pipe, (104, 196), (104, 214), (166, 214), (166, 196));
        Way(drawing, Wall, (28, 116), (22, 84));
        Way(drawing, Wall, (46, 116), (40, 84));
        drawing.Plate(new Box(17, 76, 28, 8), 3, Edge);
        Way(drawing, Thin, (90, 116), (90, 74), (114, 74), (114, 90));
        Way(drawing, Thin, (224, 116), (224, 74), (248, 74), (248, 90));
        Name(drawing, "filler", 34, 68);
        Name(drawing, "vent", 108, 68);
        Name(drawing, "tanks", 60, 236);
        Name(drawing, "cross-pipe", 136, 236);
    }

    private static void Gauge(SvgDrawing drawing)
    {
        drawing.Circle(new ChartPoint(180, 44), 26, Edge);
        Way(drawing, new Look { Stroke = Paint.Ink, Width = 3 }, (180, 54), (166, 30));
        Way(drawing, new Look { Stroke = Paint.Ink2, Width = 1.5, Dashes = (4, 4) }, (180, 70), (180, 116));
        drawing.Plate(new Box(168, 112, 24, 8), 2, Edge);
        Way(drawing, Wall, (180, 120), (180, 134), (204, 152));
        drawing.Plate(new Box(198, 146, 18, 10), 5, Edge);
        Name(drawing, "gauge", 130, 42);
    }

    private static void Line(SvgDrawing drawing)
    {
        Way(drawing, Pipe, (238, 130), (238, 190), (256, 190), (366, 190));
        Way(drawing, Look.Line(Paint.FuelEdge, 3), (366, 140), (254, 140));
        drawing.Plate(new Box(270, 178, 30, 24), 4, Edge);
        Way(drawing, Thin, (277, 178), (277, 202));
        Way(drawing, Thin, (285, 178), (285, 202));
        Way(drawing, Thin, (293, 178), (293, 202));
        drawing.Circle(new ChartPoint(334, 190), 18, Edge);
        Name(drawing, "filter", 286, 236);
        Name(drawing, "pump", 336, 236);
        Name(drawing, "return", 310, 130);
    }

    internal static void Way(SvgDrawing drawing, Look look, params (double X, double Y)[] points) =>
        drawing.Path([new Polyline([.. points.Select(p => new ChartPoint(p.X, p.Y))], Closed: false)], look);

    internal static void Name(SvgDrawing drawing, string name, double x, double y) => drawing.Text(name, new ChartPoint(x, y), new Lettering { Paint = Paint.Ink2 });
}
