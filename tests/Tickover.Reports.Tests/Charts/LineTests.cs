using System.Text;
using CsCheck;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

public sealed class LineTests
{
    private static readonly Gen<ChartPoint[]> AnyPoints =
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new ChartPoint(x, y)).Array[4, 30];

    [Fact]
    public void What_is_left_out_lies_within_the_tolerance() =>
        AnyPoints.Sample(any =>
        {
            // Places are told apart by their coordinates below, so none may come twice
            ChartPoint[] points = [.. any.Distinct()];
            var simple = Simplification.Simplify(new Polyline(points, Closed: false), 3);

            Assert.Equal(points[0], simple.Points[0]);
            Assert.Equal(points[^1], simple.Points[^1]);
            // Each point left out belongs to the stretch between the kept ones either side of it
            var kept = simple.Points.Select(p => Array.IndexOf(points, p)).ToArray();
            foreach (var (from, to) in kept.Zip(kept.Skip(1)))
            {
                for (var k = from + 1; k < to; k++)
                {
                    Assert.True(FromLine(points[k], points[from], points[to]) <= 3 + 1e-9);
                }
            }
        });

    [Fact]
    public void A_straight_line_keeps_its_ends_only_and_a_square_its_corners()
    {
        var straight = new Polyline([.. Enumerable.Range(0, 20).Select(k => new ChartPoint(k, 2 * k))], Closed: false);
        var square = new Polyline(
            [new(0, 0), new(5, 0), new(10, 0), new(10, 5), new(10, 10), new(5, 10), new(0, 10), new(0, 5)], Closed: true);

        Assert.Equal(2, Simplification.Simplify(straight, 0.1).Points.Count);
        Assert.Equal(100, Simplification.Simplify(square, 0.1).Area(), 1e-9);
        Assert.InRange(Simplification.Simplify(square, 0.1).Points.Count, 4, 5);
    }

    [Fact]
    public void A_clipped_line_stays_in_the_box_and_loses_nothing_inside()
    {
        var box = new Box(0, 0, 10, 10);
        var zigzag = new Polyline([new(-5, 5), new(5, 5), new(5, 15), new(8, 15), new(8, -5)], Closed: false);

        var pieces = Clipping.ToBox(zigzag, box);

        Assert.Equal(2, pieces.Count);
        Assert.Equal(5 + 5 + 10, pieces.Sum(p => p.Length()), 1e-9);
        Assert.All(pieces, p => Assert.All(p.Points, point => Assert.True(box.Contains(point))));
        Assert.Empty(Clipping.ToBox(new Polyline([new(20, 20), new(30, 20)], Closed: false), box));
    }

    [Fact]
    public void Any_clipped_line_stays_in_the_box() =>
        AnyPoints.Sample(points => Assert.All(
            Clipping.ToBox(new Polyline(points, Closed: true), new Box(-20, -10, 40, 20)),
            piece => Assert.All(piece.Points, p => Assert.True(new Box(-20, -10, 40, 20).Grown(1e-9).Contains(p)))));

    [Fact]
    public void Path_text_is_relative_in_tenths_and_rounding_does_not_add_up()
    {
        var text = new StringBuilder();
        SvgPath.Append(text, new Polyline([new(1, 2), new(1.04, 2), new(1.08, 2), new(-0.5, 2.25)], Closed: true));

        Assert.Equal("M1 2l.1 0-1.6 .2z", text.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(
            () => SvgPath.Append(new StringBuilder(), new Polyline([new(0, 0), new(double.NaN, 1)], Closed: false)));
    }

    private static double FromLine(ChartPoint p, ChartPoint a, ChartPoint b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt(dx * dx + dy * dy);
        return length == 0
            ? Math.Sqrt((p.X - a.X) * (p.X - a.X) + (p.Y - a.Y) * (p.Y - a.Y))
            : Math.Abs(dx * (p.Y - a.Y) - dy * (p.X - a.X)) / length;
    }
}
