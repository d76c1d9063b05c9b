using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class FuelEstimatorTests
{
    private static readonly RoadTrace Bends = Enumerable.Range(0, 6).Select(_ => DrawnRoad.Roundabouts(20, 8.3, 60)).Aggregate((a, b) => a.Then(b));

    [Fact]
    public void With_accelerations_the_estimate_is_eight_times_nearer_than_a_swinging_needle()
    {
        var pair = Pairs.Car();
        var moments = pair.Run(Bends, (0.0125, 0.0115));

        var estimate = new FuelEstimator(pair, new FuelEstimateSettings()).Run(0.1, moments.Needles, moments.Ahead, moments.Left);

        var settled = new SettledGauge(pair);
        var raw = Rms(moments, i => settled.Volume(moments.Needles[i]));
        var found = Rms(moments, i => estimate.Volumes[i]);
        Assert.True(found < raw / 8, $"needle {raw * 1000:F3} L, estimate {found * 1000:F3} L");
        Assert.Empty(estimate.Refills);
    }

    [Fact]
    public void Without_accelerations_an_ungated_mean_of_a_long_bend_is_biased()
    {
        var pair = Pairs.Car();
        var moments = pair.Run(RoadTrace.Steady(120, 0, 3), (0.0125, 0.0125));

        Assert.True(new SettledGauge(pair).Volume(moments.Needles.Skip(900).Average()) < 0.02);
    }

    [Fact]
    public void A_refill_while_standing_is_taken_for_one()
    {
        var pair = Pairs.Car();
        var trace = DrawnRoad.Roundabouts(20, 8.3, 200).Then(RoadTrace.Standing(300)).Then(DrawnRoad.Roundabouts(20, 8.3, 200));
        var moments = pair.Run(trace, (0.006, 0.006), 0.1, [new FuelFill(330, 0.008, 0.008)]);

        var estimate = new FuelEstimator(pair, new FuelEstimateSettings()).Run(0.1, moments.Needles, moments.Ahead, moments.Left);

        Assert.NotEmpty(estimate.Refills);
        Assert.Equal(moments.Total(moments.Count - 1), estimate.Volumes[^1], 0.0015);
    }

    private static double Rms(TankMoments m, Func<int, double> value) =>
        Math.Sqrt(Enumerable.Range(600, m.Count - 600).Average(i => Math.Pow(value(i) - m.Total(i), 2)));
}
