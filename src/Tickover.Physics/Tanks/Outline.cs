namespace Tickover.Physics.Tanks;

/// <summary>Plane geometry of sketched outlines. docs/physics/tanks.md (9).</summary>
internal static class Outline
{
    public const int MostPoints = 400;
    private const int StepsOfQuarterTurn = 12;
    private const double Parallel = 1e-12;
    private const double Nothing = 1e-9; // m: two arcs that meet share a point

    /// <summary>Twice the area, anticlockwise above zero.</summary>
    public static double TwiceArea(IReadOnlyList<OutlinePoint> points)
    {
        var sum = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (p, q) = (points[i], points[(i + 1) % points.Count]);
            sum += p.Across * q.Up - q.Across * p.Up; // tanks (9)
        }

        return sum;
    }

    /// <summary>Two sides that cross or touch other than in the corner they share; null for none.</summary>
    public static (int First, int Second)? Crossing(IReadOnlyList<OutlinePoint> points)
    {
        var n = points.Count;
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                var neighbours = j == i + 1 || (i == 0 && j == n - 1);
                if (neighbours ? FoldsBack(points, i, j) : Touch(points[i], points[(i + 1) % n], points[j], points[(j + 1) % n]))
                {
                    return (i, j);
                }
            }
        }

        return null;
    }

    /// <summary>Corners with a radius become short chords of the arc; an outline whose radii do not fit comes back as null.</summary>
    public static List<OutlinePoint>? Rounded(IReadOnlyList<OutlinePoint> points)
    {
        if (TightSide(points) is not null)
        {
            return null;
        }

        var round = new List<OutlinePoint>();
        for (var i = 0; i < points.Count; i++)
        {
            var (before, at, after) = Around(points, i);
            if (at.Radius <= 0)
            {
                round.Add(at);
            }
            else
            {
                Fillet(before, at, after, round);
            }
        }

        return [.. round.Where((p, i) => Distance(p, round[(i + 1) % round.Count]) > Nothing)];
    }

    /// <summary>The first side that is shorter than the radii at its ends need; null for none.</summary>
    public static int? TightSide(IReadOnlyList<OutlinePoint> points)
    {
        double Need(int i)
        {
            var (before, at, after) = Around(points, i % points.Count);
            return at.Radius <= 0 ? 0 : SetBack(before, at, after);
        }

        return Enumerable.Range(0, points.Count)
            .Where(i => !(Need(i) + Need(i + 1) <= Distance(points[i], points[(i + 1) % points.Count]) * (1 + Parallel)))
            .Select(i => (int?)i).FirstOrDefault();
    }

    /// <summary>The outline inside a wall; every side moves in by its thickness. The points go anticlockwise.</summary>
    public static OutlinePoint[] Inside(IReadOnlyList<OutlinePoint> points, double wall)
    {
        return [.. points.Select((at, i) =>
        {
            var (before, _, after) = Around(points, i);
            var (d, e) = (Direction(before, at), Direction(at, after));
            var (dx, dy, ex, ey) = (d.X, d.Y, e.X, e.Y);
            var sine = dx * ey - dy * ex;
            var cosine = dx * ex + dy * ey;
            // Along both normals at once; on a straight run the one normal will do.
            var along = Math.Abs(sine) < Parallel ? 0 : (1 - cosine) / sine;
            return at with { Across = at.Across + wall * (-dy - along * dx), Up = at.Up + wall * (dx - along * dy) };
        })];
    }

    public static double Distance(OutlinePoint p, OutlinePoint q) => Math.Sqrt((q.Across - p.Across) * (q.Across - p.Across) + (q.Up - p.Up) * (q.Up - p.Up));

    public static double Turn(OutlinePoint p, OutlinePoint q, OutlinePoint r) =>
        (q.Across - p.Across) * (r.Up - p.Up) - (q.Up - p.Up) * (r.Across - p.Across);

    private static (OutlinePoint Before, OutlinePoint At, OutlinePoint After) Around(IReadOnlyList<OutlinePoint> points, int i) =>
        (points[(i + points.Count - 1) % points.Count], points[i], points[(i + 1) % points.Count]);

    private static double TurnAt(OutlinePoint before, OutlinePoint at, OutlinePoint after)
    {
        var (d, e) = (Direction(before, at), Direction(at, after));
        return Math.Atan2(d.X * e.Y - d.Y * e.X, d.X * e.X + d.Y * e.Y);
    }

    private static double SetBack(OutlinePoint before, OutlinePoint at, OutlinePoint after) => at.Radius * Math.Tan(Math.Abs(TurnAt(before, at, after)) / 2);

    private static void Fillet(OutlinePoint before, OutlinePoint at, OutlinePoint after, List<OutlinePoint> round)
    {
        var (d, turn, setBack) = (Direction(before, at), TurnAt(before, at, after), SetBack(before, at, after));
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / (Math.PI / 2) * StepsOfQuarterTurn));
        var side = Math.Sign(turn);
        var (cx, cy) = (at.Across - setBack * d.X - side * at.Radius * d.Y, at.Up - setBack * d.Y + side * at.Radius * d.X);
        for (var k = 0; k <= steps; k++)
        {
            var (sin, cos) = Math.SinCos(turn * k / steps);
            // From the centre to where the arc begins: side·r·(dy, -dx), turned on.
            var (x, y) = (side * at.Radius * d.Y, -side * at.Radius * d.X);
            round.Add(new OutlinePoint(cx + x * cos - y * sin, cy + x * sin + y * cos));
        }
    }

    private static (double X, double Y) Direction(OutlinePoint p, OutlinePoint q)
    {
        var length = Distance(p, q);
        return ((q.Across - p.Across) / length, (q.Up - p.Up) / length);
    }

    private static bool FoldsBack(IReadOnlyList<OutlinePoint> points, int i, int j)
    {
        var n = points.Count;
        var shared = j == i + 1 ? j : i;
        var (p, q, r) = (points[(shared + n - 1) % n], points[shared], points[(shared + 1) % n]);
        var (d, e) = (Direction(p, q), Direction(q, r));
        return Math.Abs(d.X * e.Y - d.Y * e.X) < Parallel && d.X * e.X + d.Y * e.Y < 0;
    }

    private static bool Touch(OutlinePoint a, OutlinePoint b, OutlinePoint c, OutlinePoint d)
    {
        var (abc, abd, cda, cdb) = (Turn(a, b, c), Turn(a, b, d), Turn(c, d, a), Turn(c, d, b));
        return (Math.Sign(abc) * Math.Sign(abd) < 0 && Math.Sign(cda) * Math.Sign(cdb) < 0)
            || (abc == 0 && Between(a, b, c)) || (abd == 0 && Between(a, b, d))
            || (cda == 0 && Between(c, d, a)) || (cdb == 0 && Between(c, d, b));
    }

    private static bool Between(OutlinePoint a, OutlinePoint b, OutlinePoint p) =>
        p.Across >= Math.Min(a.Across, b.Across) && p.Across <= Math.Max(a.Across, b.Across)
        && p.Up >= Math.Min(a.Up, b.Up) && p.Up <= Math.Max(a.Up, b.Up);
}
