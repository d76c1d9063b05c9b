using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class CircleTests
{
    [Fact]
    public void Half_covered_is_half() => Assert.Equal(Circle.Area(1e-3) / 2, Circle.SegmentArea(1e-3, 0.5e-3), 15);

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(1e-3, 1)]
    [InlineData(5, 1)]
    public void Beyond_its_edges_a_hole_is_shut_or_open(double uncovered, double part) =>
        Assert.Equal(part * Circle.Area(1e-3), Circle.SegmentArea(1e-3, uncovered));

    [Fact]
    public void What_is_covered_and_what_is_not_make_the_hole() =>
        Gen.Double[0, 1].Sample(part =>
            Math.Abs(Circle.SegmentArea(1, part) + Circle.SegmentArea(1, 1 - part) - Circle.Area(1)) < 1e-12);

    [Fact]
    public void The_slope_is_the_chord() =>
        Gen.Double[0.01, 0.99].Sample(part =>
        {
            const double step = 1e-6;
            var slope = (Circle.SegmentArea(1, part + step) - Circle.SegmentArea(1, part - step)) / (2 * step);
            return Math.Abs(slope - 2 * Math.Sqrt(part * (1 - part))) < 1e-6;
        });

    [Fact]
    public void Any_numbers_give_a_finite_area_of_at_most_the_hole() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-2, 2]).Sample((diameter, uncovered) =>
            Circle.SegmentArea(diameter, uncovered) is >= 0 and var area && area <= Circle.Area(diameter) * (1 + 1e-12));

    [Fact]
    public void Area_and_diameter_turn_into_each_other() =>
        Gen.Double[0, 1].Sample(diameter => Math.Abs(Circle.Diameter(Circle.Area(diameter)) - diameter) < 1e-12);
}
