namespace Tickover.Workshop.Walls;

/// <summary>The outline of a wall: a polygon, either way round.</summary>
/// <param name="Corners">Its corners in order, mm; three and more.</param>
public sealed record WallOutline(IReadOnlyList<WallPoint> Corners)
{
    /// <summary>The rectangle it fits into.</summary>
    public WallBox Box => new(Corners.Min(c => c.Right), Corners.Min(c => c.Up), Corners.Max(c => c.Right), Corners.Max(c => c.Up));

    /// <summary>Area, mm².</summary>
    public double Area => Shoelace(Corners);

    /// <summary>The first two sides that cross, numbered from 1; null where none do.</summary>
    public (int First, int Second)? Crossing
    {
        get
        {
            for (var i = 0; i < Corners.Count; i++)
            {
                for (var j = i + 2; j < Corners.Count; j++)
                {
                    if ((j + 1) % Corners.Count != i && Cross(Side(i), Side(j)))
                    {
                        return (i + 1, j + 1);
                    }
                }
            }

            return null;
        }
    }

    /// <summary>How much of a rectangle lies inside.</summary>
    /// <param name="box">The rectangle.</param>
    /// <returns>mm².</returns>
    /// <remarks>Cut side by side (Sutherland and Hodgman 1974); the sides it leaves double along the edge of a hollow outline enclose nothing.</remarks>
    public double AreaIn(WallBox box)
    {
        var cut = Corners;
        cut = Cut(cut, p => p.Right - box.Left);
        cut = Cut(cut, p => box.Right - p.Right);
        cut = Cut(cut, p => p.Up - box.Bottom);
        cut = Cut(cut, p => box.Top - p.Up);
        return cut.Count < 3 ? 0 : Shoelace(cut);
    }

    private static List<WallPoint> Cut(IReadOnlyList<WallPoint> corners, Func<WallPoint, double> inside)
    {
        var kept = new List<WallPoint>(corners.Count + 4);
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (inside(from), inside(to));
            if (a >= 0)
            {
                kept.Add(from);
            }

            if ((a > 0 && b < 0) || (a < 0 && b > 0))
            {
                var part = a / (a - b);
                kept.Add(new WallPoint(double.Lerp(from.Right, to.Right, part), double.Lerp(from.Up, to.Up, part)));
            }
        }

        return kept;
    }

    private static double Shoelace(IReadOnlyList<WallPoint> corners)
    {
        var twice = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            twice += a.Right * b.Up - b.Right * a.Up;
        }

        return Math.Abs(twice) / 2;
    }

    private (WallPoint From, WallPoint To) Side(int i) => (Corners[i], Corners[(i + 1) % Corners.Count]);

    private static bool Cross((WallPoint From, WallPoint To) a, (WallPoint From, WallPoint To) b) =>
        Turn(a.From, a.To, b.From) * Turn(a.From, a.To, b.To) < 0 && Turn(b.From, b.To, a.From) * Turn(b.From, b.To, a.To) < 0;

    private static double Turn(WallPoint a, WallPoint b, WallPoint c) => (b.Right - a.Right) * (c.Up - a.Up) - (b.Up - a.Up) * (c.Right - a.Right);
}
