using Tickover.Physics.Flow;
using Tickover.Physics.Inspection;

namespace Tickover.Physics.Tests.Inspection;

public sealed class NarrowGapTests
{
    private static readonly GasState Outside = new(101_325, 293.15);

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(1)]
    public void Two_halves_make_the_whole_ring(double eccentricity)
    {
        var (near, far) = (NarrowGap.HalfRound(8e-3, 8.06e-3, 12e-3, eccentricity), NarrowGap.HalfRound(8e-3, 8.06e-3, 12e-3, -eccentricity));
        var whole = NarrowGap.Round(8e-3, 8.06e-3, 12e-3, eccentricity);

        Assert.Equal(whole.MeanCube, (near.MeanCube + far.MeanCube) / 2, 1e-12);
        Assert.Equal(whole.AreaSquareMetres, near.AreaSquareMetres + far.AreaSquareMetres, 1e-15);
    }

    [Fact]
    public void Flow_grows_with_clearance_and_depression_and_never_passes_the_orifice()
    {
        var last = 0.0;
        foreach (var clearance in new[] { 0.01e-3, 0.05e-3, 0.1e-3, 0.3e-3, 1e-3 })
        {
            var gap = NarrowGap.Round(8e-3, 8e-3 + (2 * clearance), 12e-3);
            var flow = gap.Flow(Outside, 45_000).KilogramsPerSecond;
            var orifice = new CompressibleOrifice { EffectiveAreaSquareMetres = gap.EntryCoefficient * gap.AreaSquareMetres }.MassFlow(Outside, Outside with { PressurePascals = 45_000 });

            Assert.InRange(flow, last, orifice);
            Assert.True(gap.Flow(Outside, 60_000).KilogramsPerSecond < flow);
            last = flow;
        }
    }

    [Fact]
    public void A_fine_gap_goes_by_the_cube_and_a_wide_one_says_that_friction_is_understated()
    {
        double Flow(double clearance) => NarrowGap.Round(8e-3, 8e-3 + (2 * clearance), 12e-3).Flow(Outside, 60_000).KilogramsPerSecond;

        Assert.Equal(8, Flow(10e-6) / Flow(5e-6), 0.05);
        Assert.Equal(ValidityKind.Inside, NarrowGap.Round(8e-3, 8.1e-3, 12e-3).Flow(Outside, 60_000).Validity.Kind);
        Assert.NotEqual(ValidityKind.Inside, NarrowGap.Round(8e-3, 9e-3, 12e-3).Flow(Outside, 60_000).Validity.Kind);
    }

    [Fact]
    public void Nothing_flows_without_clearance_or_depression()
    {
        Assert.Equal(0, NarrowGap.Round(8e-3, 8e-3, 12e-3).Flow(Outside, 40_000).KilogramsPerSecond);
        Assert.Equal(0, NarrowGap.Round(8e-3, 8.1e-3, 12e-3).Flow(Outside, 101_325).KilogramsPerSecond);
        Assert.Throws<ArgumentOutOfRangeException>(() => NarrowGap.Round(8e-3, 7.9e-3, 12e-3));
    }

    [Fact]
    public void A_lying_float_half_under_carries_half()
    {
        var shape = new LyingFloat(22e-3, 52e-3);

        Assert.Equal(shape.VolumeCubicMetres / 2, shape.Immersed(11e-3), 1e-12);
        Assert.Equal(11e-3, shape.DepthOf(shape.VolumeCubicMetres / 2), 1e-9);
    }

    [Fact]
    public void A_plate_s_opening_is_found_again_from_its_area()
    {
        var plate = new ThrottlePlate { BoreMetres = 40e-3, ClosedAngleRadians = 0.17, SpindleDiameterMetres = 8e-3 };

        Assert.Equal(0.03, PlateLight.OpeningOf(plate, plate.OpenArea(0.2)), 1e-9);
        Assert.Equal(0, PlateLight.Rod(plate, 0), 1e-15);
        Assert.Equal(20e-3 * (1 - (Math.Cos(0.2) / Math.Cos(0.17))), PlateLight.Rod(plate, 0.03), 1e-12);
        Assert.Equal(Math.Acos(40 / 40.6), PlateLight.ClosedAngle(40e-3, 40.6e-3), 1e-12);
    }

    [Fact]
    public void Drops_and_a_falling_tube_say_the_same_of_the_same_flow()
    {
        var flow = SeepingValve.ByDrops(30, 60, 0.02e-6);

        Assert.Equal(1e-8, flow, 1e-15);
        Assert.Equal(flow, SeepingValve.ByFall(flow * 60 / (Math.PI / 4 * 36e-6), 60, 6e-3), 1e-15);
        Assert.Equal(flow, SeepingValve.Flow(SeepingValve.HoleArea(flow, 1), 1), 1e-15);
        Assert.Throws<ArgumentOutOfRangeException>(() => SeepingValve.ByDrops(3, 0, 0.02e-6));
    }
}
