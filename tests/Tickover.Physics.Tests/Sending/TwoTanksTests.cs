using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class TwoTanksTests
{
    private static readonly RoadSample Bend = new(0, 3.5, RoadSample.Gravity);

    [Fact]
    public void Frictionless_tanks_swing_with_the_period_of_the_column()
    {
        var tanks = TestTanks.Plain();
        var moments = tanks.Run(RoadTrace.Standing(30), (0.06 * 0.45, 0.06 * 0.35), 0.01).Moments;

        var downs = moments.Zip(moments.Skip(1)).Where(p => TestTanks.Difference(tanks, p.First) > 0 && TestTanks.Difference(tanks, p.Second) <= 0).Select(p => p.Second.Seconds).ToList();

        // ω² = g a (1/A1 + 1/A2)/L
        var omega = Math.Sqrt(RoadSample.Gravity * tanks.Pipe.AreaSquareMetres * (2 / 0.06) / 0.8);
        Assert.Equal(2 * Math.PI / omega, downs[1] - downs[0], 0.015);
        Assert.Equal(0.1, moments.Max(m => TestTanks.Difference(tanks, m)), 1e-4);
        Assert.Equal(-0.1, moments.Min(m => TestTanks.Difference(tanks, m)), 1e-4);
    }

    [Fact]
    public void Fuel_is_neither_made_nor_lost_on_a_rough_road()
    {
        var tanks = TestTanks.Plain(0.06, 0.09, TestTanks.Pipe(2.5, friction: 0.03));
        var road = new RoadTrace(0.01, Enumerable.Range(0, 6000).Select(k => new RoadSample(Math.Sin(k * 0.013), 4 * Math.Sin(k * 0.031), 9.8 + Math.Sin(k * 0.7))));

        var last = tanks.Run(road, (0.020, 0.015), 1).Moments[^1];

        Assert.Equal(0.035, last.TotalCubicMetres, 1e-12);
    }

    [Fact]
    public void Half_the_step_takes_a_quarter_of_the_error()
    {
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, friction: 0.03));
        var road = new RoadTrace(0.08, Enumerable.Range(0, 500).Select(k => new RoadSample(0, 3 * Math.Sin(k * 0.08), RoadSample.Gravity)));
        double Left(double step) => (tanks with { StepSeconds = step }).Run(road, (0.025, 0.020), 0.08).Moments[^1].LeftCubicMetres;

        var (whole, half, exact) = (Left(0.04), Left(0.02), Left(0.0025));

        Assert.InRange(Math.Abs(whole - exact) / Math.Abs(half - exact), 3, 5.5);
    }

    [Fact]
    public void A_bend_to_the_left_sends_fuel_to_the_right()
    {
        var moments = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, friction: 0.03)).Run(new RoadTrace(0.01, Enumerable.Repeat(Bend, 500)), (0.02, 0.02), 0.1).Moments;

        Assert.True(moments[^1].FlowToRight > 0);
        Assert.True(moments[^1].RightCubicMetres > 0.022, $"{moments[^1].RightCubicMetres}");
    }

    [Fact]
    public void In_a_bend_for_ever_the_levels_stand_on_one_inclined_plane()
    {
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(10, friction: 0.03));
        var last = tanks.Run(new RoadTrace(0.01, Enumerable.Repeat(new RoadSample(0, 1, RoadSample.Gravity), 20_000)), (0.03, 0.03), 1).Moments[^1];

        Assert.Equal(-1 / RoadSample.Gravity, TestTanks.Difference(tanks, last), 1e-3);
    }

    [Fact]
    public void A_blocked_vent_holds_fuel_back()
    {
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, friction: 0.03)) with { Vents = TankVents.RightBlocked };

        var last = tanks.Run(RoadTrace.Standing(300), (0.030, 0.010), 1).Moments[^1];

        // Isothermal air in the right tank carries what is left of the difference.
        var squeeze = TwoTanks.AmbientPascals * ((0.06 - 0.010) / (0.06 - last.RightCubicMetres) - 1);
        Assert.Equal(740 * RoadSample.Gravity * TestTanks.Difference(tanks, last), squeeze, 10.0); // still creeping by a few pascals
        Assert.True(TestTanks.Difference(tanks, last) > 0.25);
        Assert.Null((tanks with { StepSeconds = 0.01 }).SecondsToLevel((0.030, 0.010), 0.01, 600));
    }

    [Fact]
    public void Shared_vents_let_fuel_level_as_free_ones_do()
    {
        var free = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, friction: 0.03));

        Assert.Equal(free.SecondsToLevel((0.03, 0.01), 0.005), (free with { Vents = TankVents.Shared }).SecondsToLevel((0.03, 0.01), 0.005));
    }

    [Fact]
    public void The_engine_burns_what_it_is_said_to_and_the_return_fills_its_own_side()
    {
        var draw = new FuelDraw
        {
            PickUp = new TankPlace(TankSide.Right, 0, 0, 0.01),
            BurntCubicMetresPerSecond = 5e-6,
            ReturnCubicMetresPerSecond = 20e-6,
            ReturnSide = TankSide.Left,
        };
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, bore: 0.006, friction: 0.03)) with { Draw = draw };

        var run = tanks.Run(RoadTrace.Standing(200), (0.02, 0.02), 1);

        Assert.Equal(0.04 - 200 * 5e-6, run.Moments[^1].TotalCubicMetres, 1e-9);
        Assert.True(run.Moments[^1].LeftCubicMetres > run.Moments[^1].RightCubicMetres + 0.0005);
        Assert.Equal(0, run.DrySeconds);
    }

    [Fact]
    public void The_pick_up_runs_dry_when_a_bend_takes_the_last_fuel_away()
    {
        var draw = new FuelDraw { PickUp = new TankPlace(TankSide.Left, 0, 0.1, 0.005), BurntCubicMetresPerSecond = 5e-6 };
        var tanks = TestTanks.Plain() with { Draw = draw };

        var level = tanks.Run(RoadTrace.Standing(5), (0.0012, 0.0012), 0.1);
        var bend = tanks.Run(new RoadTrace(0.01, Enumerable.Repeat(Bend, 500)), (0.0012, 0.0012), 0.1);

        Assert.Equal(0, level.DrySeconds);
        Assert.True(bend.DrySeconds > 2);
        Assert.False(bend.Moments[^1].PickUpCovered);
    }

    [Fact]
    public void A_full_tank_takes_no_more()
    {
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(2.5, friction: 0.03));

        var last = tanks.Run(new RoadTrace(0.01, Enumerable.Repeat(Bend, 6000)), (0.059, 0.059), 1).Moments[^1];

        Assert.InRange(last.RightCubicMetres, 0.0595, 0.0612);
    }

    [Fact]
    public void Where_both_settle_depends_on_the_total_alone()
    {
        var tanks = TestTanks.Plain(0.06, 0.03);

        var (left, right) = tanks.Settled(0.03);

        Assert.Equal(0.02, left, 1e-9);
        Assert.Equal(0.01, right, 1e-9);
        Assert.Equal(tanks.NeedleAtRest(0.03), tanks.Run(RoadTrace.Standing(1), (left, right), 1).Moments[^1].Needle, 1e-9);
    }

    [Fact]
    public void A_flap_lets_fuel_over_one_way_only()
    {
        var tanks = TestTanks.Plain(pipe: TestTanks.Pipe(1.5, friction: 0.03).WithFlap(TankSide.Left));

        Assert.True(tanks.SecondsToLevel((0.02, 0.03), 0.005) < 60);
        Assert.True(tanks.SecondsToLevel((0.03, 0.02), 0.005, 3600) > 600);
    }
}
