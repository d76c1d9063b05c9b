namespace Tickover.Reports.Charts;

/// <summary>A line through points; closed ones return to their first point without repeating it.</summary>
internal sealed record Polyline(IReadOnlyList<ChartPoint> Points, bool Closed)
{
    /// <summary>A closed rectangle.</summary>
    internal static Polyline Rectangle(Box box) => new(
        [
            new ChartPoint(box.Left, box.Top), new ChartPoint(box.Right, box.Top),
            new ChartPoint(box.Right, box.Bottom), new ChartPoint(box.Left, box.Bottom),
        ],
        Closed: true);

    /// <summary>Length along the line.</summary>
    internal double Length()
    {
        var sum = 0.0;
        for (var i = 1; i < Points.Count; i++)
        {
            sum += Math.Sqrt(Math.Pow(Points[i].X - Points[i - 1].X, 2) + Math.Pow(Points[i].Y - Points[i - 1].Y, 2));
        }

        return sum;
    }

    /// <summary>Area enclosed by a closed line, positive whichever way round it runs.</summary>
    internal double Area() => Math.Abs(SignedArea());

    /// <summary>Twice-halved shoelace sum: the sign tells which way round the line runs.</summary>
    internal double SignedArea()
    {
        var sum = 0.0;
        for (var i = 0; i < Points.Count; i++)
        {
            var (a, b) = (Points[i], Points[(i + 1) % Points.Count]);
            sum += a.X * b.Y - b.X * a.Y;
        }

        return sum / 2;
    }
}
