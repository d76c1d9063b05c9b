using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Tests.Visits.Gates;

public sealed class GateStatusTests
{
    [Fact]
    public void Nothing_signed_is_shut_and_names_each_check()
    {
        var status = GateStatus.Of(Bench.Visit(), Gate.EngineMayRun, Bench.Today);

        Assert.Equal(GateState.Shut, status.State);
        Assert.Equal("leaks throttle-free ventilation", Wanting(status));
        Assert.All(status.Checks, c => Assert.Equal("Not signed.", c.Words));
    }

    [Theory]
    [InlineData(Gate.BayReady)]
    [InlineData(Gate.EngineMayRun)]
    [InlineData(Gate.FitToTune)]
    [InlineData(Gate.FitForRoad)]
    public void All_signed_today_is_open(Gate gate)
    {
        var status = GateStatus.Of(Signed(Bench.Visit(), gate), gate, Bench.Today);

        Assert.Equal(GateState.Open, status.State);
        Assert.All(status.Checks, c => Assert.Contains("Signed RH, 25 Nov.", c.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void Ventilation_holds_for_its_day_and_leaks_do_not_spoil_overnight()
    {
        var status = GateStatus.Of(Signed(Bench.Visit(), Gate.EngineMayRun), Gate.EngineMayRun, Bench.Today.AddDays(1));

        Assert.Equal("ventilation", Wanting(status));
        Assert.Equal("Tap shut: the ventilation counts no longer.", status.Words);
    }

    [Theory]
    [InlineData(Stage.Storage)]
    [InlineData(Stage.Supply)]
    [InlineData(Stage.StripDown)]
    [InlineData(Stage.Build)]
    public void A_part_fitted_later_undoes_leak_and_throttle_checks(Stage stage)
    {
        var record = Signed(Bench.Visit(), Gate.EngineMayRun) with
        {
            Parts = [new PartLine { Stage = stage, What = "Hose", State = PartState.Fitted, Kept = 1, Changed = 90 }],
        };

        var status = GateStatus.Of(record, Gate.EngineMayRun, Bench.Today);

        Assert.Equal("leaks throttle-free", Wanting(status));
        Assert.Contains("“Hose” was entered as fitted", status.Checks[0].StaleBecause, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_done_before_the_check_undoes_nothing()
    {
        var record = Signed(Bench.Visit(), Gate.EngineMayRun) with
        {
            Parts = [new PartLine { Stage = Stage.Supply, What = "Hose", State = PartState.Fitted, Kept = 1, Changed = 2 }],
            Notes = [new WorkNote { Stage = Stage.Build, Kind = WorkKind.Done, What = "Refitted", Kept = 3, Changed = 3 }],
            Stages = [new StageMark { Stage = Stage.Build, State = StageState.Done, Kept = 2, Changed = 95 }],
        };

        Assert.Equal(GateState.Open, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void The_order_of_keeping_decides_and_not_the_clock()
    {
        var record = Signed(Bench.Visit(), Gate.EngineMayRun) with
        {
            Notes =
            [
                new WorkNote
                {
                    Stage = Stage.Supply, Kind = WorkKind.Done, What = "Pipe remade", On = Bench.Today.AddDays(-300),
                    KeptAt = DateTimeOffset.UnixEpoch, Kept = 90, Changed = 90,
                },
            ],
        };

        Assert.Equal(GateState.Shut, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void A_stage_of_the_fuel_system_begun_again_undoes_the_leak_check()
    {
        var record = Signed(Bench.Visit(), Gate.EngineMayRun) with { Stages = [new StageMark { Stage = Stage.StripDown, State = StageState.Begun, Kept = 1, Changed = 90 }] };

        Assert.Equal(GateState.Shut, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void A_fuel_leak_found_later_undoes_the_leak_check_until_it_is_put_right_and_checked_again()
    {
        var leak = new Finding { What = "Cross-pipe hose weeps", Severity = Severity.Unsafe, Kept = 90, Changed = 90 };
        var record = Signed(Bench.Visit(), Gate.EngineMayRun) with { Findings = [leak] };

        Assert.Equal(GateState.Shut, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void A_jet_changed_undoes_the_leak_check_and_the_checks_for_the_road()
    {
        var record = Signed(Signed(Bench.Visit(), Gate.EngineMayRun), Gate.FitForRoad) with
        {
            Parts = [new PartLine { Stage = Stage.Mixture, What = "Idle jets 55", State = PartState.Fitted, Kept = 90, Changed = 90 }],
        };

        Assert.Contains(GateKeys.Leaks, Wanting(GateStatus.Of(record, Gate.EngineMayRun, Bench.Today)), StringComparison.Ordinal);
        Assert.Contains(GateKeys.RoadThrottle, Wanting(GateStatus.Of(record, Gate.FitForRoad, Bench.Today)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_balance_written_down_leaves_the_prerequisites_but_not_the_throttle_for_the_road()
    {
        var record = Signed(Signed(Bench.Visit(), Gate.FitToTune), Gate.FitForRoad) with
        {
            Notes = [new WorkNote { Stage = Stage.Balance, Kind = WorkKind.Done, What = "Balanced", Kept = 90, Changed = 90 }],
        };

        Assert.Equal(GateState.Open, GateStatus.Of(record, Gate.FitToTune, Bench.Today).State);
        Assert.Equal(GateState.Shut, GateStatus.Of(record, Gate.FitForRoad, Bench.Today).State);
    }

    [Fact]
    public void New_plugs_undo_the_ignition_checks_only()
    {
        var record = Signed(Bench.Visit(), Gate.FitToTune) with
        {
            Parts = [new PartLine { Stage = Stage.Balance, What = "Plugs", State = PartState.Fitted, Kept = 90, Changed = 90 }],
        };

        var wanting = Wanting(GateStatus.Of(record, Gate.FitToTune, Bench.Today));

        Assert.Contains("tune-spark", wanting, StringComparison.Ordinal);
        Assert.DoesNotContain("tune-floats", wanting, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_signed_again_counts_again()
    {
        var record = Signed(Bench.Visit(), Gate.EngineMayRun);
        record = record with { SignOffs = [.. record.SignOffs, .. Signed(Bench.Visit(), Gate.EngineMayRun).SignOffs.Select(s => s with { Kept = 100 })], Notes = [new WorkNote { Stage = Stage.Supply, Kind = WorkKind.Done, Kept = 90, Changed = 90 }] };

        Assert.Equal(GateState.Open, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void An_override_says_what_was_not_checked_and_what_that_can_lead_to()
    {
        var status = GateStatus.Of(Overridden(), Gate.EngineMayRun, Bench.Today);

        Assert.Equal(GateState.Overridden, status.State);
        Assert.Contains("Overridden by RH, 25 Nov: outdoors on the apron.", status.Words, StringComparison.Ordinal);
        Assert.Contains("Not checked: the ventilation. Running indoors without extraction can kill", status.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_override_ends_with_its_day_and_stays_in_sight()
    {
        var status = GateStatus.Of(Overridden(), Gate.EngineMayRun, Bench.Today.AddDays(1));

        Assert.Equal(GateState.Shut, status.State);
        Assert.Contains("Counts no longer: it holds for one day", Assert.Single(status.Overrides).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_override_is_undone_by_what_undoes_a_check()
    {
        var record = Overridden() with { Stages = [new StageMark { Stage = Stage.Supply, State = StageState.Begun, Kept = 90, Changed = 90 }] };

        Assert.Equal(GateState.Shut, GateStatus.Of(record, Gate.EngineMayRun, Bench.Today).State);
    }

    [Fact]
    public void Keys_are_unique_and_every_check_is_written_out()
    {
        var checks = GateCatalogue.All.SelectMany(g => g.Checks).ToList();

        Assert.Equal(Enum.GetValues<Gate>(), GateCatalogue.All.Select(g => g.Gate));
        Assert.Equal(checks.Count, checks.Select(c => c.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.All(checks, c => Assert.All<string>([c.Words, c.Name, c.LookFor, c.Seen, c.Otherwise, c.Source], t => Assert.False(string.IsNullOrWhiteSpace(t), c.Key)));
        Assert.All(GateCatalogue.All, g => Assert.All(g.Checks, c => Assert.Equal(g.Gate, c.Gate)));
    }

    private static string Wanting(GateStatus status) => string.Join(' ', status.Wanting.Select(c => c.Check.Key));

    private static VisitRecord Overridden() => Bench.Visit() with
    {
        SignOffs = [new SignOff { Gate = Gate.EngineMayRun, Person = Bench.Hand.Id, Override = "outdoors on the apron", On = Bench.Today, Kept = 10 }],
    };

    private static VisitRecord Signed(VisitRecord record, Gate gate) => record with
    {
        SignOffs =
        [
            .. record.SignOffs,
            .. GateCatalogue.Of(gate).Checks.Select((c, i) => new SignOff
            {
                Gate = gate, Check = c.Key, Person = Bench.Hand.Id, Seen = "seen", On = Bench.Today, Kept = 10 + i,
            }),
        ],
    };
}
