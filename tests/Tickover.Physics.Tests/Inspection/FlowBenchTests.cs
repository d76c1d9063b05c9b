using Tickover.Physics.Fuels;
using Tickover.Physics.Inspection;

namespace Tickover.Physics.Tests.Inspection;

public sealed class FlowBenchTests
{
    private const double Kelvin = 293.15;

    private static readonly FuelGrade E5 = FuelGrade.Ethanol(5);

    [Theory]
    [InlineData(0.45e-3)]
    [InlineData(1.0e-3)]
    [InlineData(1.75e-3)]
    public void A_bore_that_flowed_by_the_jet_formula_is_found_again(double bore)
    {
        var flow = FlowBench.FlowOf(bore, 3, 0.5, E5.At(Kelvin));
        var run = new BenchRun { VolumeCubicMetres = flow * 90, Seconds = 90, HeadAtFirstMetres = 0.5, HeadAtLastMetres = 0.5 };

        var found = FlowBench.BoreOf(run, E5.At, Kelvin, 3, new BenchDeviations());

        Assert.Equal(bore, found.DiameterMetres, 1e-8);
        Assert.InRange(found.DeviationMetres / bore, 0.007, 0.02);
        Assert.True(found.RepeatMetres < found.DeviationMetres / 2);
    }

    [Fact]
    public void A_head_that_falls_empties_a_vessel_as_if_held_at_its_mean()
    {
        // A vessel of 40 cm² emptied step by step through a fixed coefficient against (1).
        const double area = 40e-4, k = 2e-6;
        var (head, seconds) = (0.52, 0.0);
        for (; head > 0.30; seconds += 0.001)
        {
            head -= k * Math.Sqrt(head) / area * 0.001;
        }

        var run = new BenchRun { VolumeCubicMetres = area * (0.52 - head), Seconds = seconds, HeadAtFirstMetres = 0.52, HeadAtLastMetres = head };

        Assert.Equal(run.FlowCubicMetresPerSecond, k * Math.Sqrt(run.MeanHeadMetres), 1e-4 * run.FlowCubicMetresPerSecond);
    }

    [Fact]
    public void Truths_drawn_with_the_stated_noise_lie_in_the_band_as_often_as_it_says()
    {
        var random = new Random(11);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var (inside, count, d) = (0, 400, new BenchDeviations());
        for (var i = 0; i < count; i++)
        {
            // The truth has another coefficient, length, head and temperature than the person believes.
            var bore = 0.4e-3 + (1.6e-3 * random.NextDouble());
            var flow = FlowBench.FlowOf(bore, Math.Max(1.5, 3 + (d.LengthRatio * Normal())), 0.5 + (d.HeadMetres * Normal()), E5.At(Kelvin + (d.Kelvin * Normal()))) * (1 + (d.DischargePart * Normal()));
            var run = new BenchRun { VolumeCubicMetres = flow * 60 * (1 + (d.VolumePart * Normal())), Seconds = 60 + (d.Seconds * Normal()), HeadAtFirstMetres = 0.5, HeadAtLastMetres = 0.5 };
            var found = FlowBench.BoreOf(run, E5.At, Kelvin, 3, d);
            inside += Math.Abs(found.DiameterMetres - bore) <= 1.645 * found.DeviationMetres ? 1 : 0;
        }

        Assert.InRange((double)inside / count, 0.86, 0.95);
    }

    [Fact]
    public void Water_and_petrol_give_other_bores_for_the_same_run()
    {
        var run = new BenchRun { VolumeCubicMetres = 200e-6, Seconds = 66, HeadAtFirstMetres = 0.5, HeadAtLastMetres = 0.5 };

        var petrol = FlowBench.BoreOf(run, E5.At, Kelvin, 3, new BenchDeviations()).DiameterMetres;
        var water = FlowBench.BoreOf(run, BenchWater.At, Kelvin, 3, new BenchDeviations()).DiameterMetres;

        Assert.True(water > petrol * 1.005);
    }

    [Fact]
    public void A_flow_no_jet_has_is_refused()
    {
        var run = new BenchRun { VolumeCubicMetres = 1, Seconds = 1, HeadAtFirstMetres = 0.5, HeadAtLastMetres = 0.5 };

        Assert.Throws<ArgumentOutOfRangeException>(() => FlowBench.BoreOf(run, E5.At, Kelvin, 3, new BenchDeviations()));
        Assert.Throws<ArgumentOutOfRangeException>(() => FlowBench.BoreOf(run with { Seconds = 0 }, E5.At, Kelvin, 3, new BenchDeviations()));
    }
}
