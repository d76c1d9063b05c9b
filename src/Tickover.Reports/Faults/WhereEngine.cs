using Tickover.Reports.Charts;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Reports.Faults;

/// <summary>The half of the drawing from the carburettor to the exhaust. Figures are places on the paper, px.</summary>
internal static class WhereEngine
{
    public const double Gap = 40;

    // Room for the words over the air cleaner.
    public const double Headroom = 10;

    private static readonly Look Edge = new() { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 2 };
    private static readonly Look Wall = Look.Line(Paint.Ink, 2);
    private static readonly Look Thin = Look.Line(Paint.Ink2, 1.5);

    public static ChartPoint At(FaultSpot spot, ChartPoint origin)
    {
        var (x, y) = spot switch
        {
            FaultSpot.Cleaner => (92, 30),
            FaultSpot.Meter => (178, 30),
            FaultSpot.Piston => (92, 74),
            FaultSpot.PumpJet => (78, 88),
            FaultSpot.Main => (92, 102),
            FaultSpot.Idle => (66, 126),
            FaultSpot.Plate => (92, 140),
            FaultSpot.Starter => (118, 158),
            FaultSpot.Bowl => (148, 108),
            FaultSpot.Linkage => (26, 170),
            FaultSpot.Manifold => (142, 190),
            FaultSpot.Ignition => (306, 66),
            FaultSpot.Engine => (228, 176),
            FaultSpot.Exhaust => (318, 208),
            _ => (92, 102),
        };
        return new ChartPoint(origin.X + x, origin.Y + y);
    }

    public static void Draw(SvgDrawing drawing, ChartPoint origin)
    {
        Carburettor(drawing, origin);
        Linkage(drawing, origin);
        Engine(drawing, origin);
    }

    private static void Carburettor(SvgDrawing drawing, ChartPoint o)
    {
        drawing.Plate(Of(o, 42, 14, 100, 32), 4, Edge);
        foreach (var x in new[] { 58.0, 76, 108, 126 })
        {
            Way(drawing, o, Thin, (x, 14), (x, 46));
        }

        drawing.Plate(Of(o, 124, 84, 48, 46), 4, Edge);
        drawing.Plate(Of(o, 126, 104, 44, 24), 2, Look.Filled(Paint.Fuel));
        Way(drawing, o, new Look { Stroke = Paint.FuelEdge, Width = 5 }, (0, 66), (148, 66), (148, 84));
        drawing.Plate(Of(o, 66, 46, 52, 118), 0, Look.Filled(Paint.Air));
        Way(drawing, o, Wall, (66, 46), (66, 84), (76, 100), (66, 120), (66, 190), (86, 212), (190, 212));
        Way(drawing, o, Wall, (118, 46), (118, 84), (108, 100), (118, 120), (118, 168), (190, 168));
        Way(drawing, o, Look.Line(Paint.Ink, 4), (72, 148), (112, 132));
        drawing.Circle(new ChartPoint(o.X + 92, o.Y + 140), 4, Look.Filled(Paint.Ink));
        drawing.Circle(new ChartPoint(o.X + 178, o.Y + 30), 15, Edge);
        Way(drawing, o, Thin, (178, 30), (186, 20));
        Name(drawing, o, "air cleaner", 92, 12);
        Name(drawing, o, "meter", 218, 35);
        Name(drawing, o, "chamber", 148, 146);
    }

    private static void Linkage(SvgDrawing drawing, ChartPoint o)
    {
        Way(drawing, o, Wall, (66, 140), (44, 140), (44, 158), (10, 158), (10, 212));
        Way(drawing, o, Look.Line(Paint.Ink, 4), (4, 216), (22, 206));
        Name(drawing, o, "linkage", 30, 236);
        Name(drawing, o, "inlet", 142, 236);
    }

    private static void Engine(SvgDrawing drawing, ChartPoint o)
    {
        drawing.Plate(Of(o, 190, 108, 76, 112), 6, Edge);
        Way(drawing, o, Wall, (204, 150), (252, 150), (252, 178), (204, 178), (204, 150));
        Way(drawing, o, Wall, (228, 178), (240, 216));
        Way(drawing, o, Look.Line(Paint.Ink, 3), (228, 92), (228, 122));
        drawing.Circle(new ChartPoint(o.X + 306, o.Y + 66), 24, Edge);
        Way(drawing, o, new Look { Stroke = Paint.Ink2, Width = 1.5, Dashes = (4, 4) }, (284, 74), (228, 92));
        Way(drawing, o, Look.Line(Paint.MetalEdge, 6), (266, 150), (282, 150), (282, 208), (360, 208));
        drawing.Plate(Of(o, 298, 196, 50, 24), 10, new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 2 });
        Name(drawing, o, "ignition", 306, 108);
        Name(drawing, o, "engine", 228, 236);
        Name(drawing, o, "exhaust", 320, 236);
    }

    private static Box Of(ChartPoint o, double left, double top, double width, double height) => new(o.X + left, o.Y + top, width, height);

    private static void Way(SvgDrawing drawing, ChartPoint o, Look look, params (double X, double Y)[] points) =>
        WhereTank.Way(drawing, look, [.. points.Select(p => (o.X + p.X, o.Y + p.Y))]);

    private static void Name(SvgDrawing drawing, ChartPoint o, string name, double x, double y) => WhereTank.Name(drawing, name, o.X + x, o.Y + y);
}
