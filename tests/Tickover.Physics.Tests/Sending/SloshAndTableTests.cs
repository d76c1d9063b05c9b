using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class SloshAndTableTests
{
    [Fact]
    public void A_jolt_swings_with_the_frequency_and_fades_with_the_damping()
    {
        var mode = new SloshMode(0.5, 0.02, 0.001);
        mode.Tune(0.1, RoadSample.Gravity);
        mode.Step(0.1);
        var heights = new List<double>();
        for (var k = 0; k < 4000; k++)
        {
            mode.Step(0);
            heights.Add(mode.HeightMetres);
        }

        var ups = Enumerable.Range(1, heights.Count - 1).Where(k => heights[k - 1] < 0 && heights[k] >= 0).ToArray();
        var damped = 1.0724 / Math.Sqrt(1 - 0.02 * 0.02);
        Assert.Equal(damped, (ups[1] - ups[0]) * 0.001, 2e-3);
        var fade = heights.Skip(ups[1]).Max() / heights.Skip(ups[0]).Max();
        Assert.Equal(Math.Exp(-2 * Math.PI * 0.02 / Math.Sqrt(1 - 0.02 * 0.02)), fade, 5e-3);
    }

    [Fact]
    public void A_slope_that_comes_at_once_stands_still_in_the_mode_at_first()
    {
        var mode = new SloshMode(0.4, 0.05, 1e-6);
        mode.Tune(0.15, RoadSample.Gravity);

        mode.Step(0.1);

        // The surface has not moved yet, so over the surface at rest the mode stands by its whole share, with the sign of the slope at the left wall.
        Assert.Equal(0.1 * SloshMode.Share(0.4), mode.HeightMetres * Math.Sign(mode.HeightMetres), 1e-6);
        Assert.True(mode.HeightMetres > 0);
    }

    [Fact]
    public void The_step_does_not_matter_while_the_slope_goes_straight()
    {
        double After(int steps)
        {
            var mode = new SloshMode(0.4, 0.05, 1.0 / steps);
            mode.Tune(0.15, RoadSample.Gravity);
            for (var k = 0; k < steps; k++)
            {
                mode.Step(0.3 / steps);
            }

            return mode.HeightMetres;
        }

        Assert.Equal(After(1000), After(10), 1e-10);
    }

    [Fact]
    public void A_wedge_has_the_level_of_the_square_root()
    {
        var wedge = LevelTable.FromAreas([0, 0.2], [0, 0.1]);

        Assert.Equal(0.01, wedge.CapacityCubicMetres, 1e-12);
        foreach (var share in new[] { 0.1, 0.37, 0.8, 1 })
        {
            Assert.Equal(0.2 * Math.Sqrt(share), wedge.LevelOf(0.01 * share), 5e-5);
            Assert.Equal(0.01 * share, wedge.VolumeAt(wedge.LevelOf(0.01 * share)), 1e-12);
        }
    }

    [Fact]
    public void Tables_refuse_what_no_tank_is()
    {
        Assert.Throws<ArgumentException>(() => LevelTable.FromAreas([0, 0.2, 0.1], [0.1, 0.1, 0.1]));
        Assert.Throws<ArgumentException>(() => LevelTable.FromAreas([0.1, 0.2], [0.1, 0.1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LevelTable.FromAreas([0, 0.2], [0.1, -0.1]));
    }

    [Theory]
    [InlineData(1, 0.0494, 0.1106)]
    [InlineData(2, 0.0188, 0.1412)]
    [InlineData(2.616, 0, 0.160)]
    [InlineData(4, 0, 0.1978)]
    public void A_tilted_box_lies_as_it_must_even_with_a_dry_corner(double sideways, double shallow, double deep)
    {
        const double gravity = 9.81;
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(1e9)) with { };
        var tank = tanks.Left with { Table = LevelTable.Box(0.06, 0.2), WidthMetres = 0.6, LengthMetres = 0.1 };
        var road = new RoadTrace(0.01, Enumerable.Repeat(new RoadSample(0, sideways, gravity), 3));

        var plane = (tanks with { Left = tank }).Run(road, (0.06 * 0.08, 0.01), 0.02).Moments[^1].LeftLevelMetres;

        var rise = 0.3 * sideways / gravity;
        Assert.Equal(deep, plane + rise, 2e-4);
        Assert.Equal(shallow, Math.Max(0, plane - rise), 2e-4);
    }
}
