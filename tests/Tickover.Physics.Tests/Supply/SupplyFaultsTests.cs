using Tickover.Physics.Supply;

namespace Tickover.Physics.Tests.Supply;

public sealed class SupplyFaultsTests
{
    [Fact]
    public void A_sound_line_has_no_faults() => Assert.Empty(Lines.Three(0.001).Faults());

    [Fact]
    public void A_bore_of_nothing_is_named()
    {
        var line = Lines.Three();
        var bad = line with { Parts = [.. line.Parts.Select(part => part is PipeRun { Name: "hose" } hose ? hose with { BoreMetres = 0 } : part)] };

        Assert.Contains(bad.Faults(), fault => fault.Contains("hose: the bore in metres is 0", StringComparison.Ordinal));
    }

    [Fact]
    public void A_branch_that_hangs_on_nothing_is_named()
    {
        var line = Lines.Three();
        var bad = line with { Parts = [.. line.Parts, Lines.Valve("fourth", "link 9")] };

        Assert.Contains(bad.Faults(), fault => fault.Equals("fourth comes after link 9, which is not in the line.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_ring_is_named()
    {
        var line = Lines.Three();
        var bad = line with { Parts = [.. line.Parts.Select(part => part.Name.Equals("link 1", StringComparison.Ordinal) ? part with { After = "link 2" } : part)] };

        Assert.Contains(bad.Faults(), fault => fault.Contains("do not reach the tank", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pipe_that_leads_nowhere_two_pick_ups_and_a_pump_behind_a_tee_are_named()
    {
        var line = Lines.Three();
        var pipe = new PipeRun { Name = "spare", After = "hose", BoreMetres = 0.006, LengthMetres = 1 };
        Assert.Contains((line with { Parts = [.. line.Parts, pipe] }).Faults(), fault => fault.StartsWith("spare leads nowhere", StringComparison.Ordinal));

        var second = Lines.Valve("second", "") with { Name = "second" };
        Assert.Contains((line with { Parts = [.. line.Parts, second] }).Faults(), fault => fault.EndsWith("one pick-up only.", StringComparison.Ordinal));

        var early = Lines.Valve("early", "pick-up");
        Assert.Contains((line with { Parts = [.. line.Parts, early] }).Faults(), fault => fault.Contains("must come before", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rising_pump_curve_is_refused()
    {
        Assert.Contains(PumpCurve.FaultsOf([(0, 20_000), (1e-5, 21_000), (2e-5, 0)]), fault => fault.StartsWith("The pump curve rises from point 1 to point 2", StringComparison.Ordinal));
        Assert.NotEmpty(PumpCurve.FaultsOf([(0, 20_000)]));
        Assert.NotEmpty(PumpCurve.FaultsOf([(0, 20_000), (1e-5, 20_000)]));
        Assert.NotEmpty(PumpCurve.FaultsOf([(0, 20_000), (0, 10_000)]));
        Assert.Empty(PumpCurve.FaultsOf([(0, 20_000), (1e-5, 20_000), (2e-5, 5_000)]));
        Assert.Throws<ArgumentException>(() => new PumpCurve([(0, 1), (1, 2)]));
    }

    [Fact]
    public void A_curve_ends_where_its_last_line_meets_nothing()
    {
        var curve = new PumpCurve([(0, 20_000), (1e-5, 15_000), (2e-5, 5_000)]);

        Assert.Equal(2.5e-5, curve.FreeFlow, 1e-12);
        Assert.Equal(17_500, curve.At(5e-6), 1e-6);
        Assert.Equal(20_000, curve.At(-1), 1e-6);
        Assert.Equal(-5_000, curve.At(3e-5), 1e-6);
    }

    [Fact]
    public void A_duty_with_an_unknown_valve_or_a_frozen_tank_is_named()
    {
        var line = Lines.Three();
        var duty = Lines.Duty(line, 1) with { TankKelvin = 20, DemandKilogramsPerSecond = new Dictionary<string, double>(StringComparer.Ordinal) { ["fifth"] = 1e-3 } };

        var faults = duty.Faults(line);

        Assert.Contains(faults, fault => fault.Equals("trial: fifth is no float valve of the line.", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("temperature at the tank", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => SupplySolver.Solve(line, duty));
    }
}
