namespace Tickover.Reports.Charts;

/// <summary>Finds a place on a contour for its figure.</summary>
internal static class ContourLabels
{
    /// <summary>A free box on the line where it runs straightest; null where there is none.</summary>
    /// <param name="line">The contour.</param>
    /// <param name="size">Width and height of the figure.</param>
    /// <param name="board">What is taken.</param>
    /// <param name="answers">Whether a place may carry a figure.</param>
    internal static Box? Find(Polyline line, (double Width, double Height) size, LabelBoard board, Func<ChartPoint, bool> answers)
    {
        (double Bend, Box Box)? best = null;
        var stride = Math.Max(1, line.Points.Count / 60);
        for (var k = 0; k < line.Points.Count; k += stride)
        {
            var box = Box.Around(line.Points[k], size.Width, size.Height);
            var fits = board.IsFree(box.Grown(3)) && Corners(box.Grown(2)).All(answers);
            var bend = fits ? Bend(line, k, stride) : double.PositiveInfinity;
            if (fits && (best is null || bend < best.Value.Bend))
            {
                best = (bend, box);
            }
        }

        return best?.Box;
    }

    private static IEnumerable<ChartPoint> Corners(Box box) => Polyline.Rectangle(box).Points;

    // How far the line turns over a label's length; the slope counts a little, for a level line is the easiest to read
    private static double Bend(Polyline line, int at, int stride)
    {
        var reach = 3 * stride;
        var count = line.Points.Count;
        ChartPoint Point(int index) => line.Points[line.Closed ? (index % count + count) % count : Math.Clamp(index, 0, count - 1)];
        var (a, b, c) = (Point(at - reach), Point(at), Point(at + reach));
        var turn = Math.Atan2(b.Y - a.Y, b.X - a.X) - Math.Atan2(c.Y - b.Y, c.X - b.X);
        var slope = Math.Abs(Math.Sin(Math.Atan2(c.Y - a.Y, c.X - a.X)));
        return Math.Abs(Math.IEEERemainder(turn, 2 * Math.PI)) + 0.3 * slope;
    }
}
