using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>Plans hold to what a hand can turn and a screw allows, and take no more turns than are needed.</summary>
public sealed class MovePlannerTests
{
    [Fact]
    public void Nothing_is_turned_where_all_are_alike()
    {
        Assert.Empty(Idle(Books.TwoBanks, Books.All(Books.TwoBanks, 4)).Turns);
    }

    [Theory]
    [InlineData(5.2, -1)]
    [InlineData(2.8, 1)]
    public void One_carburettor_off_takes_one_turn_of_its_stop_the_right_way(double air, int way)
    {
        var plan = Idle(Books.TwoBanks, Books.But(Books.TwoBanks, 4, (3, air), (4, air)));

        var (adjuster, turns) = Assert.Single(plan.Turns);
        Assert.Equal(("stop:2", way), (adjuster.Key, Math.Sign(turns)));
        Assert.True(plan.Worst < 1 && plan.WorstNow > 1);
    }

    [Fact]
    public void The_lower_barrel_of_a_carburettor_is_opened_by_its_by_pass()
    {
        var plan = Idle(Books.TwoBanks, Books.But(Books.TwoBanks, 4, (3, 3.1)));

        Assert.Contains(plan.Turns, t => string.Equals(t.Adjuster.Key, "bypass:3", StringComparison.Ordinal) && t.Turns > 0);
        Assert.DoesNotContain(plan.Turns, t => t.Adjuster.Kind == AdjusterKind.BypassScrew && t.Turns < 0);
    }

    [Fact]
    public void Every_turn_is_whole_steps_and_within_what_is_left_of_the_travel()
    {
        foreach (var plan in new[] { Books.TwoBanks, Books.InLine, Books.Twelve })
        {
            var dice = new Random(5);
            for (var k = 0; k < 12; k++)
            {
                double[] air = [.. plan.Barrels.Select(_ => 2.5 + (4 * dice.NextDouble()))];
                var moves = Idle(plan, air, (a, turns) => Math.Clamp(turns, -0.5, 0.25));

                Assert.All(moves.Turns, t => Assert.Equal(0, t.Turns * t.Adjuster.StepsATurn % 1, 1e-9));
                Assert.All(moves.Turns, t => Assert.InRange(t.Turns, -0.5, 0.25));
                Assert.True(moves.Worst <= moves.WorstNow + 1e-9);
                Assert.Equal(moves.Turns.Count, moves.Turns.Select(t => t.Adjuster.Key).Distinct(StringComparer.Ordinal).Count());
            }
        }
    }

    [Fact]
    public void A_screw_that_must_not_be_turned_is_left_alone()
    {
        var plan = Make(Books.TwoBanks, [Books.Idle(Books.But(Books.TwoBanks, 4, (3, 5.2), (4, 5.2)))], usable: a => a.Kind != AdjusterKind.StopScrew);

        Assert.DoesNotContain(plan.Turns, t => t.Adjuster.Kind == AdjusterKind.StopScrew);
    }

    [Fact]
    public void Twelve_barrels_take_as_many_turns_as_carburettors_are_off()
    {
        var two = Idle(Books.Twelve, Books.But(Books.Twelve, 4, (3, 5.4), (4, 5.4), (11, 2.6), (12, 2.6)));

        Assert.Equal("stop:2 stop:6", string.Join(' ', two.Turns.Select(t => t.Adjuster.Key).Order(StringComparer.Ordinal)));
        Assert.True(two.Worst < 1);
    }

    [Fact]
    public void A_bank_that_lags_off_idle_takes_one_turn_of_the_rod_between_the_banks()
    {
        double[] air = [.. Books.Twelve.Barrels.Select(b => b.Bank == 2 ? 8.4 : 9.6)];
        var plan = Make(Books.Twelve, [Books.Held(1500, air), Books.Held(2500, [.. air.Select(a => a + 4)])]);

        var (adjuster, turns) = Assert.Single(plan.Turns);
        Assert.Equal(AdjusterKind.BankRod, adjuster.Kind);
        Assert.True(turns > 0 && plan.Worst < plan.WorstNow);
    }

    private static MovePlan Idle(EnginePlan plan, double[] air, Func<Adjuster, double, double>? within = null) => Make(plan, [Books.Idle(air)], within: within);

    private static MovePlan Make(EnginePlan plan, IReadOnlyList<BalanceStep> steps, Func<Adjuster, bool>? usable = null, Func<Adjuster, double, double>? within = null)
    {
        var book = Books.Of(plan, steps);
        var model = Books.Model(book);
        return new MovePlanner(model.Held.Any() ? [.. model.Held] : [model.Idle!], book.Limits, usable ?? (_ => true), within ?? ((_, turns) => turns)).Make();
    }
}
