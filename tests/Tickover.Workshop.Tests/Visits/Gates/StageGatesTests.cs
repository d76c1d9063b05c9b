using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Tests.Visits.Gates;

public sealed class StageGatesTests
{
    [Fact]
    public void Stages_that_open_the_fuel_system_need_the_bay_ready()
    {
        Stage[] fuel = [Stage.Storage, Stage.Gauge, Stage.Supply, Stage.StripDown, Stage.Build];

        Assert.All(fuel, s => Assert.Contains(Gate.BayReady, StageGates.Of(s)));
    }

    [Fact]
    public void Every_stage_that_runs_the_engine_in_the_bay_needs_its_tap()
    {
        Assert.Contains(Gate.EngineMayRun, StageGates.Inside(Stage.Arrival));
        Assert.Contains(Gate.EngineMayRun, StageGates.Of(Stage.Balance));
        Assert.Contains(Gate.EngineMayRun, StageGates.Of(Stage.Mixture));
    }

    [Fact]
    public void Prerequisites_stand_before_the_first_round_and_before_mixture()
    {
        Assert.Contains(Gate.FitToTune, StageGates.Inside(Stage.Balance));
        Assert.Contains(Gate.FitToTune, StageGates.Of(Stage.Mixture));
        Assert.Equal([Gate.FitForRoad], StageGates.Of(Stage.Road));
    }
}
