using Tickover.Reports.Charts;
using Tickover.Workshop.Cars;
using static Tickover.Reports.Section.SectionGeometry;

namespace Tickover.Reports.Section;

/// <summary>The plate's edge at the progression holes, enlarged: where it stands decides what they do.</summary>
internal static class PlateLens
{
    private const double Enlarged = 4;
    private const double Radius = 58;
    private const int RimSteps = 72;
    private static readonly ChartPoint Centre = new(84, 524);

    internal static void Draw(IDrawing drawing, SectionGeometry at, CarBarrel barrel)
    {
        var from = new ChartPoint(WallRight, Middle(at, barrel));
        ChartPoint Seen(ChartPoint p) => new(Centre.X + 8 + (p.X - from.X) * Enlarged, Centre.Y + (p.Y - from.Y) * Enlarged);
        Polyline All(Polyline line) => line with { Points = [.. line.Points.Select(Seen)] };
        var rim = new Polyline(
            [
                .. Enumerable.Range(0, RimSteps).Select(k => new ChartPoint(
                    Centre.X + Radius * Math.Cos(2 * Math.PI * k / RimSteps), Centre.Y + Radius * Math.Sin(2 * Math.PI * k / RimSteps))),
            ],
            Closed: true);
        using (drawing.ClippedTo([rim]))
        {
            drawing.Path([rim], Look.Filled(Paint.Surface));
            drawing.Path([rim], SectionLooks.Air);
            drawing.Path([All(Shapes.Rectangle(WallRight, 0, WallRight + 60, Height))], SectionLooks.Casing);
            foreach (var hole in barrel.ProgressionHoles)
            {
                var (y, half) = (at.HoleY(hole.PositionMetres), at.OnBore(hole.DiameterMetres) / 2);
                var opened = All(Shapes.Rectangle(WallRight, y - half, WallRight + 60, y + half));
                drawing.Path([opened], y < at.EdgeY ? SectionLooks.AirPassage : SectionLooks.Fuel);
            }

            drawing.Path([All(at.Plate(4))], Look.Filled(Paint.MetalEdge));
        }

        drawing.Circle(Centre, Radius, Look.Line(Paint.Ink, 2));
        drawing.Text("plate's edge at the holes, ×4", new ChartPoint(Left + 4, Centre.Y + Radius + 22), new Lettering { Size = 16, Anchor = Anchor.Start, Paint = Paint.Ink2 });
    }

    private static double Middle(SectionGeometry at, CarBarrel barrel)
    {
        var holes = barrel.ProgressionHoles;
        return holes.Count == 0
            ? at.SeatedEdgeY
            : (at.HoleY(holes.Min(h => h.PositionMetres)) + at.HoleY(holes.Max(h => h.PositionMetres))) / 2;
    }
}
