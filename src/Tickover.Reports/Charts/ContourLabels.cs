namespace Tickover.Reports.Charts;

/// <summary>Finds a place on a contour for its figure.</summary>
internal static class ContourLabels
{
    // Distance between places tried, drawing units, and half a label's length in such steps
    private const double Step = 6;
    private const int Reach = 4;

    /// <summary>A free box on the line where it runs straightest; null where there is none.</summary>
    /// <param name="line">The contour.</param>
    /// <param name="size">Width and height of the figure.</param>
    /// <param name="board">What is taken.</param>
    /// <param name="answers">Whether a place may carry a figure.</param>
    internal static Box? Find(Polyline line, (double Width, double Height) size, LabelBoard board, Func<ChartPoint, bool> answers)
    {
        (double Bend, Box Box)? best = null;
        var places = Walk(line);
        for (var k = 0; k < places.Count; k++)
        {
            var box = Box.Around(places[k], size.Width, size.Height);
            var fits = board.IsFree(box.Grown(3)) && Corners(box.Grown(2)).All(answers);
            var bend = fits ? Bend(places, line.Closed, k) : double.PositiveInfinity;
            if (fits && (best is null || bend < best.Value.Bend))
            {
                best = (bend, box);
            }
        }

        return best?.Box;
    }

    private static IEnumerable<ChartPoint> Corners(Box box) => Polyline.Rectangle(box).Points;

    // Places a step apart along the line, however far apart its own points lie
    private static List<ChartPoint> Walk(Polyline line)
    {
        var places = new List<ChartPoint>();
        var left = 0.0;
        for (var k = 1; k < line.Points.Count; k++)
        {
            var (a, b) = (line.Points[k - 1], line.Points[k]);
            var length = Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2));
            for (; left < length; left += Step)
            {
                var t = left / length;
                places.Add(new ChartPoint(a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y)));
            }

            left -= length;
        }

        return places;
    }

    // How far the line turns over a label's length; the slope counts a little, for a level line is the easiest to read
    private static double Bend(List<ChartPoint> places, bool closed, int at)
    {
        var count = places.Count;
        ChartPoint Place(int index) => places[closed ? (index % count + count) % count : Math.Clamp(index, 0, count - 1)];
        var (a, b, c) = (Place(at - Reach), Place(at), Place(at + Reach));
        var turn = Math.Atan2(b.Y - a.Y, b.X - a.X) - Math.Atan2(c.Y - b.Y, c.X - b.X);
        var slope = Math.Abs(Math.Sin(Math.Atan2(c.Y - a.Y, c.X - a.X)));
        return Math.Abs(Math.IEEERemainder(turn, 2 * Math.PI)) + 0.3 * slope;
    }
}
