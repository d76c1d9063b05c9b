using Tickover.Physics.Breathing;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Mixture;

/// <summary>Balances and step of the gas exchange on the samples.</summary>
public sealed class GasExchangeTests
{
    private const double MassTolerance = 1e-6;      // the figure; flux form closes to rounding
    private const double EnergyTolerance = 1e-4;    // likewise
    private const double ResidualTolerance = 1e-4;  // likewise, cycle to cycle

    private const double StepTolerance = 1e-3;      // likewise, half the step

    private static readonly OperatingGrid Grid = new([900, 2500, 4500, 6000], [2, 6, 15, 35, 60, 82]);

    [Theory]
    [InlineData("tern-2800")]
    [InlineData("osprey-v8")]
    [InlineData("gannet-1500")]
    public void Mass_and_energy_close_and_each_cycle_repeats_the_last(string sample)
    {
        var air = Solve(sample, new AirSideSettings());

        foreach (var point in All(air))
        {
            Assert.InRange(Math.Abs(point.MassImbalance), 0, MassTolerance);
            Assert.InRange(Math.Abs(point.EnergyImbalance), 0, EnergyTolerance);
            Assert.InRange(point.Residual, 0, ResidualTolerance);
            Assert.True(point.Settled);
        }
    }

    [Theory]
    [InlineData("tern-2800")]
    [InlineData("osprey-v8")]
    [InlineData("gannet-1500")]
    public void Half_the_step_hardly_changes_the_air(string sample)
    {
        var coarse = Solve(sample, new AirSideSettings());
        var fine = Solve(sample, new AirSideSettings { StepsPerCycle = 1440 });

        foreach (var (a, b) in All(coarse).Zip(All(fine)))
        {
            Assert.InRange(Math.Abs(b.AirKilogramsPerCycle.Sum() / a.AirKilogramsPerCycle.Sum() - 1), 0, StepTolerance);
        }
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_workers()
    {
        var one = All(Solve("tern-2800", new AirSideSettings { Workers = 1 })).Select(p => p.AirKilogramsPerCycle[0]);
        var two = All(Solve("tern-2800", new AirSideSettings { Workers = 2 })).Select(p => p.AirKilogramsPerCycle[0]);

        Assert.Equal(one, two);
    }

    [Fact]
    public void More_throttle_never_means_less_air()
    {
        var air = Solve("tern-2800", new AirSideSettings());
        for (var i = 0; i < Grid.SpeedsRpm.Count; i++)
        {
            for (var j = 1; j < Grid.ThrottleDegrees.Count; j++)
            {
                // a thousandth: near wide open the air is flat and the step's own error shows
                Assert.True(air.At(i, j).AirKilogramsPerCycle[0] > 0.999 * air.At(i, j - 1).AirKilogramsPerCycle[0]);
            }
        }
    }

    private static AirSide Solve(string sample, AirSideSettings settings)
    {
        var car = CarDocument.Read(Repository.Sample(sample)).Car!;
        var engine = car.ToEngineSpec();
        return AirSideSolver.Solve(engine, engine.Groups[0], car.ToAmbientAir(), Grid, settings);
    }

    private static IEnumerable<AirPoint> All(AirSide air) =>
        Enumerable.Range(0, Grid.SpeedsRpm.Count).SelectMany(i => Enumerable.Range(0, Grid.ThrottleDegrees.Count).Select(j => air.At(i, j)));
}
