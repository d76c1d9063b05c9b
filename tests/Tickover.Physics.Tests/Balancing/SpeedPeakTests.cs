using Tickover.Physics.Balancing;

namespace Tickover.Physics.Tests.Balancing;

public sealed class SpeedPeakTests
{
    [Theory]
    [InlineData(0.0, 300)]
    [InlineData(0.4, 250)]
    [InlineData(-0.3, 600)]
    public void Speeds_without_noise_on_a_parabola_give_its_peak_back(double peak, double curvature)
    {
        var fit = new SpeedPeak { SpeedDeviation = 0.01 }.Fit([.. new[] { -0.5, -0.25, 0, 0.25, 0.5 }.Select(x => (x, 900 - (curvature * (x - peak) * (x - peak))))]);

        Assert.Equal(peak, fit.Turns, 0.001);
        Assert.Equal(900, fit.Rpm, 0.05);
        Assert.Equal(curvature, fit.Curvature, 0.5);
        Assert.Equal(900 - (curvature * peak * peak), fit.At(0), 0.05);
    }

    [Fact]
    public void One_speed_leaves_the_peak_open_and_the_trades_curvature_as_it_was()
    {
        var fit = new SpeedPeak().Fit([(0, 850)]);

        Assert.Equal(400, fit.Curvature, 1);
        Assert.True(fit.Deviation > 0.4, $"{fit.Deviation}");
    }

    [Fact]
    public void The_band_holds_the_true_peak_nine_times_in_ten()
    {
        var random = new Random(5);
        var held = 0;
        for (var k = 0; k < 500; k++)
        {
            var (peak, curvature) = (random.NextDouble() - 0.5, 250 + (300 * random.NextDouble()));
            var fit = new SpeedPeak().Fit([.. new[] { -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75 }.Select(x => (x, 900 - (curvature * (x - peak) * (x - peak)) + (8 * Normal(random))))]);
            held += Math.Abs(fit.Turns - peak) < 1.645 * fit.Deviation ? 1 : 0;
        }

        Assert.InRange(held / 500.0, 0.85, 0.96);
    }

    [Fact]
    public void No_reading_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new SpeedPeak().Fit([]));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
