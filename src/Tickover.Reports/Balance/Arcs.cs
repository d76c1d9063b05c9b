using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>Arcs about a middle; angles in degrees from straight up, clockwise.</summary>
internal static class Arcs
{
    private const double DegreesAStep = 6;

    internal static ChartPoint At(ChartPoint centre, double radius, double degrees)
    {
        var angle = degrees * Math.PI / 180;
        return new ChartPoint(centre.X + radius * Math.Sin(angle), centre.Y - radius * Math.Cos(angle));
    }

    internal static Polyline Line(ChartPoint centre, double radius, double from, double to) => new([.. Points(centre, radius, from, to)], Closed: false);

    /// <summary>A stretch of a ring between two radii.</summary>
    internal static Polyline Piece(ChartPoint centre, (double Inner, double Outer) radii, double from, double to) => new(
        [.. Points(centre, radii.Outer, from, to), .. Points(centre, radii.Inner, to, from)], Closed: true);

    /// <summary>An arrow along an arc: the line and its head.</summary>
    internal static IReadOnlyList<Polyline> Arrow(ChartPoint centre, double radius, double from, double to, double head)
    {
        var way = Math.Sign(to - from);
        var back = head / radius * 180 / Math.PI * way;
        return
        [
            Line(centre, radius, from, to - back),
            new Polyline([At(centre, radius, to), At(centre, radius + head * 0.8, to - 1.2 * back), At(centre, radius - head * 0.8, to - 1.2 * back)], Closed: true),
        ];
    }

    /// <summary>A straight arrow.</summary>
    internal static IReadOnlyList<Polyline> Arrow(ChartPoint from, ChartPoint to, double head)
    {
        var length = Math.Max(Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)), 1e-6);
        var (x, y) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var neck = new ChartPoint(to.X - x * head, to.Y - y * head);
        return
        [
            new Polyline([from, neck], Closed: false),
            new Polyline([to, new(neck.X - y * head * 0.7, neck.Y + x * head * 0.7), new(neck.X + y * head * 0.7, neck.Y - x * head * 0.7)], Closed: true),
        ];
    }

    /// <summary>Draws an arrow of either kind.</summary>
    internal static void Draw(IDrawing drawing, IReadOnlyList<Polyline> arrow, Paint paint, double width)
    {
        drawing.Path([arrow[0]], Look.Line(paint, width));
        drawing.Path([arrow[1]], Look.Filled(paint));
    }

    private static IEnumerable<ChartPoint> Points(ChartPoint centre, double radius, double from, double to)
    {
        var steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(to - from) / DegreesAStep));
        return Enumerable.Range(0, steps + 1).Select(k => At(centre, radius, from + (to - from) * k / steps));
    }
}
