using CsCheck;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

public sealed class ContourTracerTests
{
    // A 41 by 41 grid over −1 to 1 has cells of 0.05; a chord of a circle of radius 0.6 then lies at most h²/8r = 0.0005 inside it
    private const double CircleTolerance = 0.002;

    [Fact]
    public void A_cone_gives_one_closed_circle_of_the_right_radius()
    {
        var cone = Fields.Of(41, 41, (x, y) => Math.Sqrt(x * x + y * y));

        var circle = Assert.Single(new ContourTracer(cone).Trace(0.6));

        Assert.True(circle.Closed);
        Assert.All(circle.Points, p => Assert.Equal(0.6, Math.Sqrt(p.X * p.X + p.Y * p.Y), CircleTolerance));
        Assert.Equal(Math.PI * 0.36, circle.Area(), 0.01);
    }

    [Fact]
    public void A_plane_gives_one_straight_open_line()
    {
        var plane = Fields.Of(9, 7, (x, y) => 2 * x + y);

        var line = Assert.Single(new ContourTracer(plane).Trace(0.5));

        Assert.False(line.Closed);
        Assert.All(line.Points, p => Assert.Equal(0.5, 2 * p.X + p.Y, 1e-12));
        Assert.Equal(-1, line.Points.Min(p => p.Y), 1e-12);
        Assert.Equal(1, line.Points.Max(p => p.Y), 1e-12);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(-0.1)]
    public void A_saddle_is_parted_the_way_its_bilinear_surface_parts_it(double level)
    {
        // One cell, z = xy: at a level above zero the high corners stand apart, below it they are joined
        var saddle = Fields.Of(2, 2, (x, y) => x * y);

        var lines = new ContourTracer(saddle).Trace(level);

        Assert.Equal(2, lines.Count);
        // Each branch of the hyperbola lies in two quadrants' corners only: both its ends have the same sign of x·y as the level
        Assert.All(lines, l => Assert.All(l.Points, p => Assert.Equal(Math.Sign(level), Math.Sign(p.X * p.Y))));
        Assert.All(lines, l => Assert.Equal(Math.Sign(l.Points[0].X), Math.Sign(l.Points[^1].X)));
    }

    [Fact]
    public void Areas_close_at_the_border_and_leave_holes()
    {
        // A ring between radius 0.3 and 0.8
        var ring = Fields.Of(81, 81, (x, y) => 0.25 - Math.Abs(Math.Sqrt(x * x + y * y) - 0.55));

        var outlines = ContourTracer.Areas(ring, 0);

        Assert.Equal(2, outlines.Count);
        Assert.All(outlines, o => Assert.True(o.Closed));
        Assert.Equal(Math.PI * (0.64 - 0.09), Math.Abs(outlines.Sum(o => o.SignedArea())), 0.01);
    }

    [Fact]
    public void Areas_of_a_field_wholly_above_are_its_whole_rectangle()
    {
        var outline = Assert.Single(ContourTracer.Areas(Fields.Of(5, 4, (_, _) => 1), 0));

        Assert.Equal(4, outline.Area(), 1e-9);
    }

    [Fact]
    public void Nested_bands_add_up_to_the_whole()
    {
        var hill = Fields.Of(61, 61, (x, y) => Math.Exp(-3 * (x * x + y * y)) + 0.2 * x);
        double Above(double level) => Math.Abs(ContourTracer.Areas(hill, level).Sum(o => o.SignedArea()));

        var bands = new[] { -1.0, 0.1, 0.3, 0.6, 2.0 };
        var sum = bands.Zip(bands.Skip(1)).Sum(b => Above(b.First) - Above(b.Second));

        Assert.Equal(4, sum, 1e-9);
        Assert.All(bands.Zip(bands.Skip(1)), b => Assert.True(Above(b.First) >= Above(b.Second)));
    }

    [Fact]
    public void No_line_enters_a_gap_and_lines_end_at_it()
    {
        var gap = Fields.Of(21, 21, (x, y) => Math.Abs(x) < 0.25 ? double.NaN : y);

        var lines = new ContourTracer(gap).Trace(0.05);

        Assert.Equal(2, lines.Count);
        Assert.All(lines, l => Assert.False(l.Closed));
        Assert.All(lines, l => Assert.All(l.Points, p => Assert.True(Math.Abs(p.X) >= 0.25)));
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(5, 1)]
    [InlineData(1, 1)]
    public void A_single_row_or_column_has_no_lines(int columns, int rows)
    {
        var strip = new Field(new double[columns], new double[rows], new double[columns, rows]).Map((i, j) => i + j);

        Assert.Empty(new ContourTracer(strip).Trace(0.5));
    }

    [Fact]
    public void A_constant_field_and_an_empty_one_have_no_lines()
    {
        Assert.Empty(new ContourTracer(Fields.Of(5, 5, (_, _) => 1)).Trace(1));
        Assert.Empty(new ContourTracer(Fields.Of(5, 5, (_, _) => double.NaN)).Trace(1));
    }

    [Fact]
    public void Every_line_of_any_field_is_finite_inside_the_grid_and_ends_at_the_border() =>
        Gen.Double[-1, 1].Array[36].Select(Gen.Double[-1, 1]).Sample((values, level) =>
        {
            var field = Fields.Of(6, 6, (_, _) => 0).Map((i, j) => Math.Round(values[i * 6 + j], 1));
            foreach (var line in new ContourTracer(field).Trace(Math.Round(level, 1)))
            {
                Assert.All(line.Points, p => Assert.InRange(p.X, -1, 1));
                Assert.All(line.Points, p => Assert.InRange(p.Y, -1, 1));
                if (!line.Closed)
                {
                    Assert.All(new[] { line.Points[0], line.Points[^1] }, p => Assert.True(Math.Abs(p.X) == 1 || Math.Abs(p.Y) == 1));
                }
            }
        });
}
