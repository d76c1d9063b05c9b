using Tickover.Reports.Charts;
using static Tickover.Reports.Section.SectionGeometry;

namespace Tickover.Reports.Section;

/// <summary>Casing, bore, choke, auxiliary venturi and throttle plate.</summary>
internal static class AirWayDrawing
{
    private const double AuxiliaryTop = 204;
    private const double AuxiliaryBottom = 300;
    private const double AuxiliaryInner = 13;

    internal static void Casing(IDrawing drawing)
    {
        var left = Shapes.Quarter(new ChartPoint(WallLeft, 112), new ChartPoint(334, 44)).ToArray();
        drawing.Path(
            [
                new Polyline(
                    [
                        .. left, .. left.Reverse().Select(p => p with { X = 2 * BoreCentre - p.X }),
                        new ChartPoint(WallRight, Bottom), new ChartPoint(WallLeft, Bottom),
                    ],
                    Closed: true),
            ],
            SectionLooks.Air);
        drawing.Path(
            [
                new Polyline(
                    [
                        .. left, .. Shapes.Open(322, 54, 326, 76, 326, 128, 256, 128, 256, 186, 72, 186, 72, 452, 236, 452, 236, Bottom,
                            WallLeft, Bottom).Points,
                    ],
                    Closed: true),
                new Polyline(
                    [
                        .. left.Select(p => p with { X = 2 * BoreCentre - p.X }),
                        .. Shapes.Open(570, 54, 566, 76, 566, 104, 668, 104, 668, 350, 660, 350, 660, Bottom, WallRight, Bottom).Points,
                    ],
                    Closed: true),
            ],
            SectionLooks.Casing);
        Arrow(drawing, BoreCentre - 40);
        Arrow(drawing, BoreCentre + 40);
    }

    internal static void Choke(IDrawing drawing, SectionGeometry at, bool selected)
    {
        var throat = BoreCentre - at.ThroatHalf;
        var left = new Polyline(
            [
                new ChartPoint(WallLeft, ChokeTop),
                .. Shapes.UprightCurve(new ChartPoint(WallLeft + 2, ChokeTop), new ChartPoint(throat, ThroatY - 8)),
                .. Shapes.UprightCurve(new ChartPoint(throat, ThroatY + 8), new ChartPoint(WallLeft + 2, ChokeBottom)),
                new ChartPoint(WallLeft, ChokeBottom),
            ],
            Closed: true);
        drawing.Path([left, Shapes.Mirrored(left, BoreCentre)], SectionLooks.Body(selected));
    }

    internal static void AuxiliaryVenturi(IDrawing drawing, SectionGeometry at, bool selected, bool flows)
    {
        var outer = OuterHalf(at);
        var middle = (AuxiliaryTop + AuxiliaryBottom) / 2;
        var inner = BoreCentre - AuxiliaryInner;
        var rim = BoreCentre - outer + 4;
        var left = new Polyline(
            [
                new ChartPoint(BoreCentre - outer, AuxiliaryTop),
                .. Shapes.UprightCurve(new ChartPoint(rim, AuxiliaryTop), new ChartPoint(inner, middle)),
                .. Shapes.UprightCurve(new ChartPoint(inner, middle), new ChartPoint(rim, AuxiliaryBottom)),
                new ChartPoint(BoreCentre - outer, AuxiliaryBottom),
            ],
            Closed: true);
        drawing.Path([left, Shapes.Mirrored(left, BoreCentre)], SectionLooks.Body(selected));
        // The arm that carries it is the nozzle's passage
        drawing.Path([Shapes.Rectangle(WellCentre + WellHalf, ThroatY - 9, inner, ThroatY + 9)], SectionLooks.Body(selected));
        drawing.Path([Shapes.Rectangle(WellCentre + WellHalf, ThroatY - 5, inner, ThroatY + 5)], flows ? SectionLooks.Fuel : SectionLooks.Cavity);
        Spray(drawing, flows, [(0, 262), (7, 277), (-6, 290), (4, 306), (-8, 324), (8, 342), (0, 362)]);
    }

    internal static double OuterHalf(SectionGeometry at) => Math.Max(AuxiliaryInner + 6, Math.Min(30, at.ThroatHalf - 14));

    internal static void Plate(IDrawing drawing, SectionGeometry at, bool selected)
    {
        drawing.Path([at.Plate(7)], Look.Filled(selected ? Paint.Mark : Paint.MetalEdge));
        drawing.Circle(new ChartPoint(BoreCentre, SpindleY), at.SpindleRadius, SectionLooks.Cavity with { Width = 3 });
    }

    private static void Spray(IDrawing drawing, bool flows, (double X, double Y)[] drops)
    {
        foreach (var (x, y) in flows ? drops : [])
        {
            drawing.Circle(new ChartPoint(BoreCentre + x, y), 3, SectionLooks.Drop);
        }
    }

    private static void Arrow(IDrawing drawing, double x) =>
        drawing.Path([Shapes.Open(x, 66, x, 126), Shapes.Open(x - 8, 114, x, 126, x + 8, 114)], SectionLooks.AirLine);
}
