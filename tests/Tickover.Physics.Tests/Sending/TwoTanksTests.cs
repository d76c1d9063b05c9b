using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class TwoTanksTests
{
    [Fact]
    public void Without_friction_the_fuel_swings_with_the_period_of_its_columns()
    {
        var pair = Pairs.Plain(loss: 0);

        var moments = pair.Run(RoadTrace.Standing(30), (0.06 * 0.55, 0.06 * 0.45), 0.01);

        // ω² = g a (1/A₁ + 1/A₂)/L: 14.027 s
        Assert.Equal(14.027, Period(moments), 0.02); // found to a hundredth at either end
        Assert.Equal(0.1, moments.LeftLevels.Max() - moments.RightLevels.Min(), 0.0005);
    }

    [Fact]
    public void With_losses_inertia_carries_the_level_past_the_middle()
    {
        var moments = Pairs.Plain().Run(RoadTrace.Standing(60), (0.06 * 0.55, 0.06 * 0.45), 0.01);

        var crossing = Enumerable.Range(0, moments.Count).First(i => Pairs.Difference(moments, i) <= 0) * 0.01;
        var overshoot = Enumerable.Range(0, moments.Count).Min(i => Pairs.Difference(moments, i));

        Assert.Equal(11.519, crossing, 0.02);
        Assert.Equal(-0.00524, overshoot, 2e-5);
    }

    [Fact]
    public void Fuel_is_neither_made_nor_lost()
    {
        var pair = Pairs.Car();
        var trace = DrawnRoad.Roundabouts(20, 8.3, 120);

        var moments = pair.Run(trace, (0.012, 0.011));

        Assert.Equal(0.023 - 3e-6 * 0.1 * (moments.Count - 1), moments.Total(moments.Count - 1), 1e-9);
    }

    [Fact]
    public void A_bend_pushes_fuel_to_the_outside_as_far_as_the_level_allows()
    {
        var pair = Pairs.Car(bore: 0.03) with { Draw = FuelDraw.None };

        var moments = pair.Run(RoadTrace.Steady(900, 0, 1.0), (0.012, 0.012));

        // Settled, the levels differ by a B/g with B the distance of the tanks' middles.
        Assert.Equal(-1.0 * 0.9 / pair.Gravity, Pairs.Difference(moments, moments.Count - 1), 1e-4);
    }

    [Fact]
    public void Half_the_step_changes_the_answer_by_a_quarter_of_the_error()
    {
        var pair = Pairs.Car();
        var trace = DrawnRoad.Roundabouts(20, 8.3, 60);
        TankMoments Of(double step) => pair.Run(trace, (0.012, 0.011), 0.1, step, []);
        var best = Of(0.00125);

        var errors = new[] { 0.01, 0.005 }.Select(step => Worst(Of(step), best)).ToArray();

        Assert.True(errors[0] < 1e-5, $"{errors[0]} m³ apart at the usual step");
        Assert.True(errors[1] < 0.6 * errors[0] || errors[0] < 1e-7, $"{errors[0]} then {errors[1]} m³");
    }

    [Fact]
    public void A_blocked_vent_holds_a_difference_for_ever()
    {
        var open = Pairs.Car() with { Draw = FuelDraw.None };
        var shut = open with { Right = open.Right with { Vent = TankVent.Blocked } };
        TankMoments After(TwoTanks pair) => pair.Run(RoadTrace.Standing(3600), (0.020, 0.010), 10);

        var (levelled, held) = (After(open), After(shut));

        Assert.True(Math.Abs(Pairs.Difference(levelled, levelled.Count - 1)) < 0.002);
        Assert.True(Pairs.Difference(held, held.Count - 1) > 0.08);
    }

    [Fact]
    public void A_flap_lets_fuel_through_one_way()
    {
        var flap = Pairs.Car() with { Draw = FuelDraw.None, Pipe = new CrossPipe { BoreMetres = 0.01, LengthMetres = 1.2, LossToLeft = 1e5 } };

        var right = flap.Run(RoadTrace.Standing(300), (0.020, 0.010));
        var left = flap.Run(RoadTrace.Standing(300), (0.010, 0.020));

        Assert.True(right.PipeFlows.Max() > 30 * -left.PipeFlows.Min());
    }

    [Fact]
    public void A_return_line_fills_the_side_it_leads_to()
    {
        var pair = Pairs.Car(bore: 0.006) with { Draw = new FuelDraw { ReturnedCubicMetresPerSecond = 1.5e-5, PickUpSide = TankSide.Right, ReturnSide = TankSide.Left } };

        var moments = pair.Run(RoadTrace.Standing(1800), (0.012, 0.012), 1);

        Assert.True(Pairs.Difference(moments, moments.Count - 1) > 0.03);
    }

    [Fact]
    public void A_pick_up_on_the_inside_of_a_bend_runs_dry()
    {
        var pair = Pairs.Car();
        var low = (0.002, 0.002);

        var left = pair.Run(RoadTrace.Steady(20, 0, 5), low);
        var right = pair.Run(RoadTrace.Steady(60, 0, -5), low);

        Assert.All(left.Covered, Assert.True);
        Assert.False(right.Covered[^1]);
        Assert.Contains(right.Lamps, lit => !lit);
    }

    [Fact]
    public void A_sender_in_the_middle_of_joined_tanks_of_one_width_feels_no_tilt_of_its_own()
    {
        var pair = Pairs.Car();
        var middle = pair with { Fitting = pair.Fitting! with { First = pair.Fitting.First with { Place = default } }, Pipe = pair.Pipe with { BoreMetres = 1e-4 } };

        var moments = middle.Run(RoadTrace.Steady(5, 0, 2), (0.012, 0.012));

        Assert.All(moments.SenderLevels, level => Assert.Equal(moments.SenderLevels[0], level, 1e-4));
    }

    private static double Worst(TankMoments a, TankMoments b) =>
        Enumerable.Range(0, a.Count).Max(i => Math.Abs(a.LeftVolumes[i] - b.LeftVolumes[i]));

    private static double Period(TankMoments m)
    {
        var down = Enumerable.Range(1, m.Count - 1).First(i => Pairs.Difference(m, i) <= 0 && Pairs.Difference(m, i - 1) > 0);
        var up = Enumerable.Range(down, m.Count - down).First(i => Pairs.Difference(m, i) > 0);
        return 2 * (up - down) * m.EverySeconds;
    }
}
