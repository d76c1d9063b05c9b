namespace Tickover.Reports.Charts;

/// <summary>Leaves out points that a straight line replaces within a tolerance.</summary>
/// <remarks>D. H. Douglas, T. K. Peucker, Cartographica 10 (1973), 112-122; from memory.</remarks>
internal static class Simplification
{
    /// <summary>The same line with fewer points; none of those left out lies further than the tolerance from it.</summary>
    internal static Polyline Simplify(Polyline line, double tolerance)
    {
        var points = line.Points;
        if (points.Count < 4)
        {
            return line;
        }

        var keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var open = new Stack<(int From, int To)>();
        Split(line, keep, open);
        while (open.TryPop(out var part))
        {
            var (index, distance) = Furthest(points, part.From, part.To);
            if (distance > tolerance)
            {
                keep[index] = true;
                open.Push((part.From, index));
                open.Push((index, part.To));
            }
        }

        return line with { Points = [.. points.Where((_, i) => keep[i])] };
    }

    /// <summary>All lines with fewer points.</summary>
    internal static IReadOnlyList<Polyline> Simplify(IReadOnlyList<Polyline> lines, double tolerance) =>
        [.. lines.Select(l => Simplify(l, tolerance))];

    // The ends of a closed line lie beside each other; the point furthest from its start gives the two halves a chord
    private static void Split(Polyline line, bool[] keep, Stack<(int From, int To)> open)
    {
        var last = line.Points.Count - 1;
        if (!line.Closed)
        {
            open.Push((0, last));
            return;
        }

        var start = line.Points[0];
        var far = Enumerable.Range(1, last - 1).MaxBy(i => Squared(line.Points[i], start));
        keep[far] = true;
        open.Push((0, far));
        open.Push((far, last));
    }

    private static (int Index, double Distance) Furthest(IReadOnlyList<ChartPoint> points, int from, int to)
    {
        var (a, b) = (points[from], points[to]);
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt(dx * dx + dy * dy);
        var (index, largest) = (from, 0.0);
        for (var i = from + 1; i < to; i++)
        {
            var p = points[i];
            var distance = length > 0
                ? Math.Abs(dx * (p.Y - a.Y) - dy * (p.X - a.X)) / length
                : Math.Sqrt(Squared(p, a));
            if (distance > largest)
            {
                (index, largest) = (i, distance);
            }
        }

        return (index, largest);
    }

    private static double Squared(ChartPoint a, ChartPoint b) =>
        (a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y);
}
