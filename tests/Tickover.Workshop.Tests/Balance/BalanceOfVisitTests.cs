using System.Globalization;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Tests.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Tests.Balance;

/// <summary>Readings and turns of a record as the rounds and steps of a balancing.</summary>
public sealed class BalanceOfVisitTests
{
    private static readonly EnginePlan Plan = PlanOfCar.Of(CarDocument.Read(Repository.Sample("tern-2800")).Car!);
    private static readonly Guid Round = Guid.NewGuid();
    private static readonly int[] Whole = [1, 2, 3, 4, 5, 6, 1];
    private int _kept;

    [Fact]
    public void A_round_has_every_barrel_once_and_the_first_again_as_its_proof()
    {
        var round = Assert.IsType<RoundRead>(Assert.Single(Of([.. Whole.Select(b => Air(b, b == 1 && _kept > 1 ? 4.2 : 4.0))]).Steps)).Round;

        Assert.Equal([1, 2, 3, 4, 5, 6], round.Readings.Select(r => r.Barrel));
        Assert.Equal(4.2, round.Again!.Air!.Value, 1e-9);
        Assert.Equal((1, true, false), (round.Number, round.IsIdle, round.RodsOff));
    }

    [Fact]
    public void A_barrel_read_again_at_once_is_a_repeat_and_the_last_counts()
    {
        var round = ((RoundRead)Of([Air(1, 4.0), Air(1, 4.4), Air(2, 4.1)]).Steps[0]).Round;

        Assert.Equal(4.4, round.Readings[0].Air!.Value, 1e-9);
        Assert.Null(round.Again);
        Assert.Equal([3, 4, 5, 6, 1], ReadPlan.LeftOf(Whole, [1, 1, 2]));
    }

    [Fact]
    public void A_turn_ends_the_round_though_readings_go_on_under_its_number()
    {
        var balance = Of([Air(1, 4.0), Air(2, 4.0), Turn("bypass:2"), Air(2, 4.3)]);

        Assert.Equal([typeof(RoundRead), typeof(Turned), typeof(RoundRead)], balance.Steps.Select(s => s.GetType()));
        Assert.Equal([2], ((RoundRead)balance.Steps[2]).Round.Readings.Select(r => r.Barrel));
    }

    [Fact]
    public void Looking_ends_no_round_and_rods_off_is_noted_with_the_next()
    {
        var balance = Of([new ScrewTurn { Kind = ScrewTurnKind.RodsOff, Kept = ++_kept }, Air(1, 4.0), new ScrewTurn { Kind = ScrewTurnKind.LookedAt, Adjuster = "stop:2", GapMillimetres = 0.1, Kept = ++_kept }, Air(2, 4.0)]);

        Assert.Equal([typeof(RodsTakenOff), typeof(RoundRead), typeof(LookedAt)], balance.Steps.Select(s => s.GetType()));
        Assert.True(((RoundRead)balance.Steps[1]).Round.RodsOff && balance.RodsOff);
        Assert.Equal(2, ((RoundRead)balance.Steps[1]).Round.Readings.Count);
    }

    [Fact]
    public void Vacuum_of_the_same_speed_joins_the_round_of_air()
    {
        var vacuum = Air(3, 0) with { Measure = "idleDepression", Place = new Place(PlaceKind.Cylinder, "3"), Si = 55_000, Round = Guid.NewGuid() };

        var balance = Of([Air(3, 4.0), vacuum]);

        var reading = Assert.Single(((RoundRead)Assert.Single(balance.Steps)).Round.Readings);
        Assert.Equal((4.0, 55.0), (Math.Round(reading.Air!.Value, 9), reading.Vacuum!.Value));
        Assert.True(balance.Available.HasFlag(ReadKinds.Vacuum));
    }

    [Fact]
    public void What_was_struck_out_does_not_count() =>
        Assert.Equal([2], ((RoundRead)Of([Air(1, 9.0) with { Removed = true }, Air(2, 4.0)]).Steps[0]).Round.Readings.Select(r => r.Barrel));

    [Fact]
    public void Only_the_proof_is_wanted_before_the_advice_moves_on_but_not_of_a_form_kept_at_once()
    {
        var next = new NextMove { Kind = NextKind.Read, Who = "", What = "", Why = "", HeldRpm = 1500, Read = ReadKinds.Air };
        var one = ReadPlan.Of(Of([.. Whole.SkipLast(1).Select(b => Air(b, 4.0))]), next, null);
        var form = ReadPlan.Of(Of([.. Whole.SkipLast(1).Select(b => Air(b, 4.0) with { Kept = 1 })]), next, null);

        Assert.Equal(("idleAirflow", 1, true), (one.Measure.Key, one.Next, one.IsProof));
        Assert.Equal(("airflow1500", 1, false), (form.Measure.Key, form.Next, form.IsProof));
    }

    [Fact]
    public void The_barrels_now_are_the_latest_of_each_and_hollow_where_older_than_the_move()
    {
        var book = new BalanceBook { Plan = Plan, Steps = Of([.. Whole.Select(b => Air(b, b == 4 ? 3.3 : 4.0)), Turn("bypass:4"), Air(4, 3.9)]).Steps };

        var now = BarrelsNow.Of(book, BalanceAdvice.Of(book), null);

        Assert.Equal(3.9, now.Barrels[3].Air!.Value, 0.05);
        Assert.False(now.Barrels[3].IsHollow);
        Assert.Equal((5 * 4.0 + 3.9) / 6, now.Mean!.Value, 0.05);
        Assert.All(now.Barrels, b => Assert.Equal(Standing.Within, b.Standing));
    }

    [Fact]
    public void The_proof_of_a_turn_compares_what_was_expected_with_what_was_got()
    {
        var steps = Of([.. Whole.Select(b => Air(b, b == 4 ? 2.9 : 4.0))]).Steps.ToList();
        steps.AddRange(new[] { 1500.0, 2500.0 }.Select((rpm, k) => new RoundRead(new BalanceRound { Number = k + 2, HeldRpm = rpm, Readings = [.. Plan.Barrels.Select(b => new BarrelReading(b.Number) { Air = b.Number == 4 ? 6.9 : 8, Rpm = rpm })] })));
        var book = new BalanceBook { Plan = Plan, Steps = steps };
        var next = BalanceAdvice.Of(book).Next;
        Assert.Equal("bypass:4", next.Adjuster?.Key);

        var proof = MoveProof.Of(book with { Steps = [.. steps, new Turned("bypass:4", next.Turns)] })!;
        var expected = Assert.Single(proof.Expected);
        Assert.Equal("not read yet", proof.Words(expected));
        Assert.Equal("less than expected", (proof with { Got = new Dictionary<int, double> { [4] = expected.Low - 0.1 } }).Words(expected));
        Assert.Empty(MoveProof.Of(book with { Steps = [.. steps, new Turned("stop:2", 0.5)] })!.Expected);
    }

    private static BalanceOfVisit Of(IReadOnlyList<RecordItem> items) => BalanceOfVisit.Of(
        Bench.Visit() with { Readings = [.. items.OfType<Reading>()], ScrewTurns = [.. items.OfType<ScrewTurn>()] }, Plan);

    private Reading Air(int barrel, double kilogramsPerHour) => new()
    {
        Stage = Stage.Balance,
        Measure = "idleAirflow",
        Place = new Place(PlaceKind.Barrel, barrel.ToString(CultureInfo.InvariantCulture)),
        Si = kilogramsPerHour / 3600,
        Typed = "x",
        Round = Round,
        EngineSpeedRpm = 900,
        Kept = ++_kept,
    };

    private ScrewTurn Turn(string key) => new() { Adjuster = key, Turns = 0.125, Kept = ++_kept };
}
