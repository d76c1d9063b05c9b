namespace Tickover.Reports.Charts;

/// <summary>Cuts lines at the border of a box.</summary>
internal static class Clipping
{
    /// <summary>The pieces of a line inside a box (Liang and Barsky's parametric clip, from memory).</summary>
    internal static IReadOnlyList<Polyline> ToBox(Polyline line, Box box)
    {
        var pieces = new List<Polyline>();
        var piece = new List<ChartPoint>();
        var count = line.Points.Count;
        for (var i = 0; i < (line.Closed ? count : count - 1); i++)
        {
            if (Segment(line.Points[i], line.Points[(i + 1) % count], box) is not var (from, to))
            {
                Finish(piece, pieces);
                continue;
            }

            if (piece.Count == 0 || piece[^1] != from)
            {
                Finish(piece, pieces);
                piece.Add(from);
            }

            piece.Add(to);
        }

        Finish(piece, pieces);
        return pieces;
    }

    private static void Finish(List<ChartPoint> piece, List<Polyline> pieces)
    {
        if (piece.Count > 1)
        {
            pieces.Add(new Polyline([.. piece], Closed: false));
        }

        piece.Clear();
    }

    private static (ChartPoint From, ChartPoint To)? Segment(ChartPoint a, ChartPoint b, Box box)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var (t0, t1) = (0.0, 1.0);
        var inside = Cut(-dx, a.X - box.Left, ref t0, ref t1) && Cut(dx, box.Right - a.X, ref t0, ref t1)
            && Cut(-dy, a.Y - box.Top, ref t0, ref t1) && Cut(dy, box.Bottom - a.Y, ref t0, ref t1);
        if (!inside)
        {
            return null;
        }

        ChartPoint On(double t) => t == 0 ? a : t == 1 ? b : new ChartPoint(a.X + t * dx, a.Y + t * dy);
        return (On(t0), On(t1));
    }

    private static bool Cut(double towards, double room, ref double t0, ref double t1)
    {
        if (towards == 0)
        {
            return room >= 0;
        }

        var t = room / towards;
        (t0, t1) = towards < 0 ? (Math.Max(t0, t), t1) : (t0, Math.Min(t1, t));
        return t0 <= t1;
    }
}
