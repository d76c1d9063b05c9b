using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;

namespace Tickover.Practice.Tests;

/// <summary>How the engine answers whoever turns and reads it.</summary>
public sealed class PracticeEngineTests
{
    [Theory]
    [MemberData(nameof(Plans.Names), MemberType = typeof(Plans))]
    public void The_same_seed_and_acts_give_the_same_answers(string name)
    {
        var (one, two, other) = (Story(name, 5), Story(name, 5), Story(name, 6));

        Assert.Equal(one, two);
        Assert.NotEqual(one, other, StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Plans.Names), MemberType = typeof(Plans))]
    public void Every_car_runs_as_it_comes_in_and_has_the_faults_its_difficulty_says(string name)
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var engine = PracticeEngine.Start(Plans.Called(name), seed, seed % 4);
            var truth = engine.Truth();

            Assert.InRange(truth.IdleRpm, 0.6 * engine.Plan.IdleRpm, 1.4 * engine.Plan.IdleRpm);
            Assert.All(truth.IdleAir, a => Assert.InRange(a, 0, 25));
            Assert.Equal(Math.Min(seed % 4, 2), truth.Faults.Count);
            Assert.True(engine.ReadRound(null, PracticeEngine.AllKinds).Done);
            Assert.True(engine.ReadRound(2500, ReadKinds.Air).Done);
        }
    }

    [Fact]
    public void A_round_reads_every_barrel_once_and_the_first_again_with_its_speed()
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 1, 0);

        var round = Assert.IsType<RoundRead>(engine.ReadRound(null, ReadKinds.Air | ReadKinds.Vacuum).Step).Round;

        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8], round.Readings.Select(r => r.Barrel));
        Assert.Equal(1, round.Again!.Barrel);
        Assert.Equal(Moment.AsFound, round.Moment);
        Assert.All(round.Readings, r => Assert.True(r is { Air: not null, Vacuum: not null, Lambda: null, Header: null, Rpm: not null }));
        Assert.InRange(engine.Minutes, 2, 4);
    }

    [Fact]
    public void A_screw_stops_at_its_end_and_says_so()
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 2, 0);

        engine.Turn("bypass:3", -3);
        var more = engine.Turn("bypass:3", -0.125);
        var turned = Assert.IsType<Turned>(engine.Turn("bypass:3", 6).Step);

        Assert.False(more.Done);
        Assert.Contains("at its end", more.Words, StringComparison.Ordinal);
        Assert.Equal(3, turned.Turns, 6);
    }

    [Fact]
    public void What_cannot_be_done_is_answered_by_a_sentence_and_changes_nothing()
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 2, 1);
        PracticeAnswer[] answers =
        [
            engine.Turn("stop:9", 0.125), engine.Turn("stop:1", 0), engine.Turn("stop:1", double.NaN), engine.Turn("stop:1", 1e9), engine.RodsOn(), engine.OfferRod("rod:2"), engine.OfferRod("rod:7"),
            engine.LookAtStop("stop:9"), engine.ReadRound(double.NaN, ReadKinds.Air), engine.ReadRound(200, ReadKinds.Air), engine.ReadBarrel(0, null, ReadKinds.Air),
            engine.Repair(new FaultPlace(BalanceFault.LeakBelowPlate, 9)), engine.Repair(new FaultPlace(BalanceFault.DeadScrew, 0, "stop:77")),
        ];

        Assert.All(answers, a => Assert.False(a.Done));
        Assert.All(answers, a => Assert.EndsWith(".", a.Words, StringComparison.Ordinal));
        Assert.Empty(engine.Steps);
    }

    [Fact]
    public void Rods_off_no_speed_can_be_held_and_nothing_is_handed_over()
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 2, 0);

        Assert.True(engine.RodsOff().Done);
        Assert.False(engine.ReadRound(1500, ReadKinds.Air).Done);
        Assert.False(engine.Finish().Done);
        Assert.IsType<LookedAt>(engine.OfferRod("bankrod").Step);
        Assert.True(engine.RodsOn().Done);
        Assert.NotNull(engine.Finish().Score);
        Assert.False(engine.ReadRound(null, ReadKinds.Air).Done);
    }

    [Fact]
    public void Couplings_and_links_stay_on()
    {
        Assert.False(PracticeEngine.Start(Plans.InLine, 2, 0).RodsOff().Done);
        Assert.False(PracticeEngine.Start(Plans.MotorcycleFour, 2, 0).RodsOff().Done);
        Assert.True(PracticeEngine.Start(Plans.ConstantDepression, 2, 0).RodsOff().Done);
    }

    [Theory]
    [InlineData(BalanceFault.PlateSeating)]
    [InlineData(BalanceFault.TwistedSpindle)]
    [InlineData(BalanceFault.StopNotTouching)]
    [InlineData(BalanceFault.RodLength)]
    [InlineData(BalanceFault.LeverAngle)]
    [InlineData(BalanceFault.LeakBelowPlate)]
    [InlineData(BalanceFault.MeterSeal)]
    [InlineData(BalanceFault.WeakCylinder)]
    [InlineData(BalanceFault.BankTiming)]
    [InlineData(BalanceFault.WornSpindle)]
    [InlineData(BalanceFault.DeadScrew)]
    public void A_fault_named_right_is_mended_and_one_named_wrong_costs_as_much(BalanceFault fault)
    {
        var (engine, place) = Plans.With(Plans.TwoBanks, fault);
        var wrong = fault == BalanceFault.DeadScrew ? place with { Screw = "mixture:1" } : place with { Place = place.Place == 1 ? 2 : 1 };

        var no = engine.Repair(wrong);
        var spent = engine.Minutes;
        var yes = engine.Repair(place);
        var score = engine.Finish().Score!;

        Assert.False(no.WasThere);
        Assert.True(yes.WasThere);
        Assert.Equal(spent, engine.Minutes - spent, 6);
        Assert.Equal((1, 1, 1), (score.FaultsHidden, score.FaultsFound, score.NamedWrong));
    }

    private static string Story(string name, int seed)
    {
        var engine = PracticeEngine.Start(Plans.Called(name), seed, 3);
        var key = engine.Plan.Adjusters[^1].Key;
        PracticeAnswer[] answers =
        [
            engine.ReadRound(null, PracticeEngine.AllKinds), engine.Turn(key, 0.5), engine.ReadBarrel(1, 2000, ReadKinds.Air), engine.LookAtStop("stop:1"), engine.ReadRound(1500, PracticeEngine.AllKinds), engine.Finish(),
        ];
        return string.Join(';', answers.Select(a => $"{a.Words} {a.Reading} {a.Score}")) + string.Join(";", engine.Steps.OfType<RoundRead>().SelectMany(r => r.Round.Readings));
    }
}
