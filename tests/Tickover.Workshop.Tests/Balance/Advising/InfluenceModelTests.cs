using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>What a turn does is learned from before and after, and trusted less when the engine has changed.</summary>
public sealed class InfluenceModelTests
{
    private const string Stop = "stop:2";

    [Fact]
    public void A_gain_goes_from_what_physics_expects_to_what_turns_have_shown()
    {
        var expected = Learned(Pairs(0, 1)).Expected;
        var once = Learned(Pairs(1, 1.6 * expected));
        var thrice = Learned(Pairs(3, 1.6 * expected));

        Assert.InRange(once.PerTurn, 1.05 * expected, 1.6 * expected);
        Assert.InRange(thrice.PerTurn, once.PerTurn, 1.62 * expected);
        Assert.True(thrice.Band < once.Band);
        Assert.Equal(3, thrice.TimesTurned);
    }

    [Fact]
    public void Another_speed_makes_levels_and_gains_less_sure()
    {
        var steps = Pairs(2, 6).ToList();
        var same = Books.Model(Books.TwoBanksBook([.. steps, Read(4, 900)]));
        var faster = Books.Model(Books.TwoBanksBook([.. steps, Read(4, 1050)]));

        Assert.True(Band(faster) > 1.2 * Band(same));
    }

    [Fact]
    public void A_screw_that_does_nothing_is_said_and_suspected()
    {
        var even = Books.All(Books.TwoBanks, 4);
        var advice = BalanceAdvice.Of(Books.TwoBanksBook(Books.Idle(even), Books.Held(1500, [.. even.Select(a => a + 5)]), Books.Held(2500, [.. even.Select(a => a + 11)]), new RodsTakenOff(), Books.Idle(even), new Turned(Stop, 0.5), Books.Some((3, 4), (4, 4))));

        Assert.Contains(advice.Remarks, r => r.Contains("Not trusted until it is looked at", StringComparison.Ordinal));
        Assert.Equal("deadScrew screw stop:2", advice.Causes[0].Fault.ToString());
    }

    [Fact]
    public void A_turn_moves_what_is_expected_of_its_own_barrels_before_they_are_read()
    {
        var model = Books.Model(Books.TwoBanksBook(Books.Idle(Books.All(Books.TwoBanks, 4)), new RodsTakenOff(), Books.Idle(Books.All(Books.TwoBanks, 4)), new Turned(Stop, 0.25)));

        Assert.True(model.Idle!.Rows[2].Level > 4.4);
        Assert.InRange(model.Idle.Rows[0].Level, 3.8, 4.1);
    }

    // rods off, then the stop out and in again by a quarter, read each time
    private static IEnumerable<BalanceStep> Pairs(int times, double gain)
    {
        yield return new RodsTakenOff();
        yield return Books.Idle(Books.All(Books.TwoBanks, 4));
        var turns = times > 0 ? times : 1;
        for (var k = 0; k < turns; k++)
        {
            var way = k % 2 == 0 ? 0.25 : -0.25;
            yield return new Turned(Stop, way);
            if (times > 0)
            {
                var air = way > 0 ? 4 + (0.25 * gain) : 4;
                yield return Books.Some((3, air), (4, air));
            }
        }
    }

    private static LearnedGain Learned(IEnumerable<BalanceStep> steps) => Books.Model(Books.TwoBanksBook(steps)).Gains.Single(g => g.HeldRpm is null);

    private static double Band(InfluenceModel model) => model.Gains.Single(g => g.HeldRpm is null).Band;

    private static RoundRead Read(double air, double rpm) => Books.Round(null, Books.All(Books.TwoBanks, air), r => r with { Rpm = rpm });

    [Fact]
    public void A_barrel_that_reads_otherwise_with_nothing_noted_counts_as_it_reads_now_and_is_said()
    {
        var book = Books.TwoBanksBook(Books.Idle(Books.All(Books.TwoBanks, 4)), Books.Idle(Books.All(Books.TwoBanks, 4)), Books.Idle(Books.But(Books.TwoBanks, 4, (3, 5.2))));

        var model = Books.Model(book);

        Assert.Equal(5.2, model.Idle!.Rows[2].Level, 0.1);
        Assert.Equal(4.0, model.Idle.Rows[0].Level, 0.05);
        Assert.Equal(3, Assert.Single(model.Unnoted).Barrel);
        Assert.Contains(BalanceAdvice.Of(book).Remarks, r => r.Contains("3 (4.0 → 5.2)", StringComparison.Ordinal) && r.Contains("nothing is noted", StringComparison.Ordinal));
    }

    [Fact]
    public void Noise_of_the_meter_and_a_turn_that_is_noted_are_no_such_change()
    {
        var noted = Books.Model(Books.TwoBanksBook(Books.Idle(Books.All(Books.TwoBanks, 4)), new Turned("bypass:3", 1), Books.Idle(Books.But(Books.TwoBanks, 4, (3, 5.2)))));
        var noise = Books.Model(Books.TwoBanksBook(Books.Idle(Books.All(Books.TwoBanks, 4)), Books.Idle(Books.But(Books.TwoBanks, 4, (3, 4.2), (5, 3.8)))));

        Assert.Empty(noted.Unnoted);
        Assert.Empty(noise.Unnoted);
    }
}
