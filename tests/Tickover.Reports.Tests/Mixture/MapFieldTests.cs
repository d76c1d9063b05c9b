using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed class MapFieldTests
{
    [Fact]
    public void The_border_of_the_overrun_lies_where_the_mean_pressure_is_zero()
    {
        // Brake is opening − rpm/300: zero at 3,000 rpm and 10°, a straight line in speed
        var map = Maps.Typical();
        var frame = MapFrame.For(map.Grid, PictureSize.Full);
        var field = new MapField(map, map.ForBarrel(1), frame);

        foreach (var rpm in new[] { 1500.0, 3000, 4500 })
        {
            Assert.True(field.HasAnswer(frame.Place(new MapSpot(rpm, rpm / 300 * 1.25))), $"above the line at {rpm}");
            Assert.False(field.HasAnswer(frame.Place(new MapSpot(rpm, rpm / 300 * 0.75))), $"below the line at {rpm}");
        }
    }

    [Fact]
    public void Without_a_figure_that_tells_the_steps_are_rounded_off_half_way()
    {
        var flags = Fields(21, (i, _) => i >= 10 ? 1 : 0);
        var fine = new Field(Refinement.Even(0, 20, 201), Refinement.Even(0, 20, 201), new double[201, 201]);

        var border = SmoothFlag.Refine(flags, flags.Map((_, _) => double.NaN), fine);

        var line = Assert.Single(new ContourTracer(border).Trace(0));
        Assert.All(line.Points, p => Assert.Equal(9.5, p.X, 0.1));
    }

    [Fact]
    public void A_figure_that_tells_puts_the_border_where_it_crosses_over()
    {
        var flags = Fields(21, (i, j) => i + j > 20 ? 1 : 0);
        var figure = Fields(21, (i, j) => 3 * (i + j));
        var fine = new Field(Refinement.Even(0, 20, 81), Refinement.Even(0, 20, 81), new double[81, 81]);

        var line = Assert.Single(new ContourTracer(SmoothFlag.Refine(flags, figure, fine)).Trace(0));

        Assert.All(line.Points, p => Assert.Equal(20.5, p.X + p.Y, 1e-6));
    }

    [Fact]
    public void Every_circuit_has_its_region_and_each_hand_over_one_line()
    {
        var map = Maps.Of((_, opening) => Maps.Point(
            0.9, feeding: opening < 4 ? FuelCircuit.Idle : opening < 20 ? FuelCircuit.Progression : opening < 45 ? FuelCircuit.Main : FuelCircuit.MainCorrecting));
        var frame = MapFrame.For(map.Grid, PictureSize.Full);
        var field = new MapField(map, map.ForBarrel(1), frame);

        Assert.Equal(3, field.Feeding.HandOvers().Count);
        Assert.Equal(FuelCircuit.Idle, field.Feeding.At(frame.Place(new MapSpot(3000, 1))));
        Assert.Equal(FuelCircuit.Progression, field.Feeding.At(frame.Place(new MapSpot(3000, 10))));
        Assert.Equal(FuelCircuit.Main, field.Feeding.At(frame.Place(new MapSpot(3000, 30))));
        Assert.Equal(FuelCircuit.MainCorrecting, field.Feeding.At(frame.Place(new MapSpot(3000, 70))));
    }

    [Fact]
    public void The_smooth_field_goes_through_the_computed_points()
    {
        var map = Maps.Typical();
        var frame = MapFrame.For(map.Grid, PictureSize.Full);
        var coarse = new CoarseMap(map.Grid, map.ForBarrel(1), frame).Figure(p => p.Lambda);

        var fine = Refinement.Refine(coarse, coarse.Xs, coarse.Ys);

        Assert.Equal(coarse.Values.Cast<double>(), fine.Values.Cast<double>());
    }

    private static Field Fields(int count, Func<int, int, double> value) =>
        new Field(Refinement.Even(0, count - 1, count), Refinement.Even(0, count - 1, count), new double[count, count]).Map(value);
}
