using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Tanks;

public sealed class OutlineCheckTests
{
    private static readonly OutlinePoint[] Box = [new(0, 0), new(0.5, 0), new(0.5, 0.25), new(0, 0.25)];

    [Fact]
    public void A_plain_outline_has_no_fault_and_comes_back_as_it_is() => Assert.Equal((null, Box.Length), (OutlineCheck.Of(Box).Fault, OutlineCheck.Of(Box).Round.Count));

    [Fact]
    public void A_corner_with_a_radius_loses_what_lies_outside_its_arc()
    {
        // A quarter of the square less a quarter of the disc: (1 - pi/4) r².
        OutlinePoint[] rounded = [new(0, 0, 0.1), .. Box.Skip(1)];

        var round = OutlineCheck.Of(rounded).Round;

        var area = Math.Abs(round.Select((p, i) => p.Across * round[(i + 1) % round.Count].Up - round[(i + 1) % round.Count].Across * p.Up).Sum()) / 2;
        Assert.Equal(0.125 - (1 - Math.PI / 4) * 0.01, area, 3e-5);
    }

    [Theory]
    [InlineData(OutlineFaultKind.Crossing, "0 2", "0 0 0.3 0.25 0.3 0 0 0.25")]
    [InlineData(OutlineFaultKind.SamePlace, "1", "0 0 0.3 0 0.3 0 0 0.25")]
    [InlineData(OutlineFaultKind.NoArea, "", "0 0 0.3 0 0.5 0")]
    [InlineData(OutlineFaultKind.Corners, "", "0 0 0.3 0")]
    public void What_is_wrong_is_named_with_its_sides(OutlineFaultKind kind, string sides, string places)
    {
        var numbers = places.Split(' ').Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture));

        var fault = OutlineCheck.Of([.. numbers.Chunk(2).Select(p => new OutlinePoint(p[0], p[1]))]).Fault!;

        Assert.Equal((kind, sides), (fault.Kind, string.Join(' ', fault.Sides)));
    }

    [Fact]
    public void Radii_that_need_more_than_a_side_name_that_side()
    {
        var fault = OutlineCheck.Of([new(0, 0), new(0.5, 0, 0.13), new(0.5, 0.25, 0.13), new(0, 0.25)]).Fault!;

        Assert.Equal((OutlineFaultKind.Radii, 1), (fault.Kind, Assert.Single(fault.Sides)));
        Assert.Contains("at corners 2 and 3", fault.Words, StringComparison.Ordinal);
        Assert.Null(OutlineCheck.Of([new(0, 0), new(0.5, 0, 0.125), new(0.5, 0.25, 0.125), new(0, 0.25)]).Fault);
    }

    [Fact]
    public void The_band_of_a_box_follows_from_its_three_sizes()
    {
        // Each of 2 + 2 sides moves alone: tau sqrt(2 (a d)² + 2 (b d)² + (a b)²), by hand for 0.5 x 0.25 x 0.3 m and 2 mm.
        var expected = 0.002 * Math.Sqrt(2 * 0.15 * 0.15 + 2 * 0.075 * 0.075 + 0.125 * 0.125);

        Assert.Equal(expected, OutlineCheck.BandCubicMetres(Box, 0.3, 0.002), 1e-12);
    }
}
