using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class FuelEstimatorTests
{
    private const double Litre = 1e-3;

    private static readonly TwoTanks Tanks = TestTanks.Plain(0.1, 0.1, new CrossPipe { BoreMetres = 0.01, LengthMetres = 0.9 }) with
    {
        Sender = new TankSender(new TankPlace(TankSide.Left, 0, 0.08, 0), FloatArm.Between(0.5, 0.8, 0.01, 0.95)),
        Draw = new FuelDraw { PickUp = new TankPlace(TankSide.Right, 0, 0, 0.005), BurntCubicMetresPerSecond = 12 * Litre / 3600 },
    };

    [Fact]
    public void Bends_that_swing_the_needle_hardly_move_the_estimate()
    {
        var (truth, readings) = Drive(Enumerable.Range(0, 60_000).Select(k => new RoadSample(0, 3 * Math.Sign(Math.Sin(k * 0.0011)), RoadSample.Gravity)), 40 * Litre);
        var estimator = new FuelEstimator(Tanks, new EstimatorSettings());

        var estimates = estimator.Estimate(readings);

        double Rms(Func<int, double> error) => Math.Sqrt(Enumerable.Range(120, readings.Count - 120).Average(k => error(k) * error(k)));
        var (ours, raw) = (Rms(k => estimates[k].CubicMetres - truth[k]), Rms(k => estimator.Scale.CubicMetresAt(readings[k].Needle) - truth[k]));
        Assert.True(raw > 1 * Litre, $"raw {raw}");
        Assert.True(ours < 0.1 * raw, $"estimate {ours}, raw {raw}");
    }

    [Fact]
    public void A_fill_is_believed_when_calm_readings_keep_saying_so()
    {
        var (low, high) = (Tanks.Settled(20 * Litre), Tanks.Settled(60 * Litre));
        var before = Tanks.Run(RoadTrace.Standing(120), low, 0.5).Moments;
        var after = Tanks.Run(RoadTrace.Standing(240), high, 0.5, before[^1].Needle).Moments;
        GaugeReading[] readings = [.. before.Select(m => new GaugeReading(m.Seconds, m.Needle, m.Road)), .. after.Skip(1).Select(m => new GaugeReading(120 + m.Seconds, m.Needle, m.Road))];

        var estimates = new FuelEstimator(Tanks, new EstimatorSettings()).Estimate(readings);

        Assert.Equal(20 * Litre, estimates[239].CubicMetres, 0.5 * Litre);
        Assert.Equal(60 * Litre, estimates[^1].CubicMetres, 1.5 * Litre);
        Assert.Contains(estimates, e => !e.Taken);
    }

    [Fact]
    public void The_band_narrows_as_readings_come_and_holds_the_truth()
    {
        var (truth, readings) = Drive(Enumerable.Repeat(RoadSample.Level, 12_000), 50 * Litre);

        var estimates = new FuelEstimator(Tanks, new EstimatorSettings()).Estimate(readings);

        Assert.True(Width(estimates[^1]) < 0.5 * Width(estimates[0]));
        Assert.InRange(truth[^1], estimates[^1].LowCubicMetres, estimates[^1].HighCubicMetres);
    }

    [Fact]
    public void The_scale_gives_back_the_litres_of_a_needle_at_rest()
    {
        var scale = new NeedleScale(Tanks);

        Assert.Equal(55 * Litre, scale.CubicMetresAt(Tanks.NeedleAtRest(55 * Litre)), 0.2 * Litre);
        Assert.True(scale.Moves);
        Assert.False(new NeedleScale(Tanks with { Gauge = Tanks.Gauge with { Circuit = Tanks.Gauge.Circuit with { Fault = WireFault.Open } } }).Moves);
    }

    private static double Width(FuelEstimate e) => e.HighCubicMetres - e.LowCubicMetres;

    private static (double[] Truth, List<GaugeReading> Readings) Drive(IEnumerable<RoadSample> road, double total)
    {
        var trace = new RoadTrace(0.01, road);
        var moments = Tanks.Run(trace, Tanks.Settled(total), 0.5).Moments;
        var readings = moments.Select((m, k) => new GaugeReading(m.Seconds, m.Needle, Mean(trace, k))).ToList();
        return ([.. moments.Select(m => m.TotalCubicMetres)], readings);
    }

    private static RoadSample Mean(RoadTrace trace, int k)
    {
        var part = trace.Samples.Skip(Math.Max(0, (k - 1) * 50)).Take(50).ToArray();
        return new RoadSample(part.Average(s => s.AheadMetresPerSecondSquared), part.Average(s => s.LeftMetresPerSecondSquared), part.Average(s => s.UpMetresPerSecondSquared));
    }
}
