using CsCheck;
using Tickover.Physics.Walls;

namespace Tickover.Physics.Tests.Walls;

public sealed class WallZoneTests
{
    private static readonly GrowthRange Twenty = new() { YoungestYears = 18, OldestYears = 25 };

    [Fact]
    public void Half_a_millimetre_in_a_year_by_the_cube_root_is_1_077_in_ten()
    {
        Assert.Equal(1.077, 0.5 * GrowthRange.Factor(1.0 / 3, 1, 9), 0.001);
        Assert.Equal(13.82, GrowthRange.AgeWhenThrough(1.2, 0.5, 1.0 / 3, 1), 0.01);
        Assert.Equal(5.76, GrowthRange.AgeWhenThrough(1.2, 0.5, 0.5, 1), 0.01);
        Assert.Equal(2.4, GrowthRange.AgeWhenThrough(1.2, 0.5, 1, 1), 0.01);
    }

    [Fact]
    public void The_band_of_growth_is_ordered_and_begins_at_one() => Gen.Double[0, 50].Sample(years =>
    {
        var (slow, middle, fast) = Twenty.Factors(years);
        return slow >= 1 && middle >= slow && fast >= middle && (years > 0 || fast <= 1);
    });

    [Fact]
    public void The_chance_of_a_hole_never_falls_with_the_years()
    {
        var zone = Zone(0.9e-3);
        var estimate = zone.Estimate()!;
        var course = Enumerable.Range(0, 11).Select(y => zone.HoleChance(estimate, Twenty, 2 * y)).ToArray();

        Assert.All(course.Zip(course.Skip(1)), p =>
        {
            Assert.True(p.Second.Low >= p.First.Low - 1e-12);
            Assert.True(p.Second.Middle >= p.First.Middle - 1e-12);
            Assert.True(p.Second.High >= p.First.High - 1e-12);
        });
        Assert.All(course, c => Assert.True(c.Low <= c.Middle && c.Middle <= c.High));
    }

    [Fact]
    public void A_hole_that_was_found_is_certain()
    {
        var zone = Zone(0.9e-3) with { Sample = Zone(0.9e-3).Sample with { DeeperThanMetres = [0.9e-3] } };

        Assert.True(zone.IsThrough);
        Assert.Equal(new ChanceBand(1, 1, 1), zone.HoleChance(zone.Estimate()!, Twenty, 0));
    }

    [Fact]
    public void A_pit_that_was_read_grows_through_on_its_own()
    {
        var all = Zone(0.65e-3) with { AreaSquareMetres = 8 * 0.0025 };
        var estimate = all.Estimate()!;

        Assert.Equal(0, all.PatchesNotRead);
        Assert.Equal(new ChanceBand(0, 0, 0), all.HoleChance(estimate, Twenty, 0));
        Assert.Equal(1, all.HoleChance(estimate, Twenty, 30).High);
    }

    [Fact]
    public void Spots_speak_for_their_own_foot_only()
    {
        var spots = Zone(0.9e-3) with { PatchSquareMetres = 30e-6 };

        Assert.True(spots.PatchesNotRead > 1000);
        Assert.True(spots.HoleChance(spots.Estimate()!, Twenty, 0).Middle > Zone(0.9e-3).HoleChance(Zone(0.9e-3).Estimate()!, Twenty, 0).Middle);
    }

    [Fact]
    public void Chances_of_two_zones_add_as_independent_ones() =>
        Assert.Equal(0.28, new ChanceBand(0.1, 0.1, 0.1).Or(new ChanceBand(0.2, 0.2, 0.2)).Middle, 1e-12);

    [Fact]
    public void Even_loss_has_its_rate_and_pitting_factor()
    {
        var loss = UniformLoss.Of([0.1e-3, 0.2e-3, 0.6e-3], 30);

        Assert.Equal(0.3e-3, loss.LossMetres, 1e-12);
        Assert.Equal(10e-6, loss.RateMetresPerYear, 1e-12);
        Assert.Equal(2, loss.PittingFactor!.Value, 1e-12);
        Assert.Null(UniformLoss.Of([-0.1e-3], 30).PittingFactor);
    }

    private static WallZone Zone(double wall) => new()
    {
        Sample = new PitSample { DepthsMetres = [0.21e-3, 0.26e-3, 0.29e-3, 0.33e-3, 0.36e-3, 0.42e-3, 0.47e-3, 0.58e-3], StepMetres = 0.01e-3 },
        PatchSquareMetres = 0.0025,
        AreaSquareMetres = 0.15,
        WallMetres = wall,
        GaugeErrorMetres = 0.05e-3,
    };
}
