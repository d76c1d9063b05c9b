using Tickover.Reports.Charts;

namespace Tickover.Reports.Section;

/// <summary>Outlines from a few numbers.</summary>
internal static class Shapes
{
    private const int CurveSteps = 24;

    /// <summary>A closed outline through x, y, x, y.</summary>
    internal static Polyline Closed(params double[] places) => new(Pairs(places), Closed: true);

    /// <summary>An open line through x, y, x, y.</summary>
    internal static Polyline Open(params double[] places) => new(Pairs(places), Closed: false);

    internal static Polyline Rectangle(double left, double top, double right, double bottom) =>
        Polyline.Rectangle(new Box(left, top, right - left, bottom - top));

    /// <summary>From one place to another in an S that leaves and arrives upright.</summary>
    internal static IEnumerable<ChartPoint> UprightCurve(ChartPoint from, ChartPoint to) =>
        Enumerable.Range(0, CurveSteps + 1).Select(k =>
        {
            var t = (double)k / CurveSteps;
            return new ChartPoint(from.X + (to.X - from.X) * t * t * (3 - 2 * t), from.Y + (to.Y - from.Y) * t);
        });

    /// <summary>A quarter of an ellipse from one place, which it leaves upright, to another, which it reaches level.</summary>
    internal static IEnumerable<ChartPoint> Quarter(ChartPoint from, ChartPoint to) =>
        Enumerable.Range(0, CurveSteps + 1).Select(k =>
        {
            var angle = Math.PI / 2 * k / CurveSteps;
            return new ChartPoint(to.X + (from.X - to.X) * Math.Cos(angle), from.Y + (to.Y - from.Y) * Math.Sin(angle));
        });

    /// <summary>The same outline on the other side of an upright line.</summary>
    internal static Polyline Mirrored(Polyline line, double about) =>
        line with { Points = [.. line.Points.Select(p => p with { X = 2 * about - p.X })] };

    private static ChartPoint[] Pairs(double[] places) =>
        [.. places.Chunk(2).Select(p => new ChartPoint(p[0], p[1]))];
}
