using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>The order of work: read, faults before screws, idle before off idle, proof at the end (trade report 2.6).</summary>
public sealed class AdviserTests
{
    private static readonly double[] Even = Books.All(Books.TwoBanks, 4);
    private static readonly double[] Even1500 = Books.All(Books.TwoBanks, 9);
    private static readonly double[] Even2500 = Books.All(Books.TwoBanks, 15);
    private static readonly double[] RearOpen = Books.But(Books.TwoBanks, 4, (3, 5.1), (4, 5.1));

    [Fact]
    public void First_idle_is_read_with_all_gauges_then_the_held_speeds()
    {
        var first = Next();
        Assert.Equal((NextKind.Read, null, Books.Meter.Available), (first.Kind, first.HeldRpm, first.Read));
        Assert.Equal((NextKind.Read, 1500.0), (Next(Books.Idle(Even)).Kind, Next(Books.Idle(Even)).HeldRpm));
        Assert.Equal((NextKind.Read, 2500.0), (Next(Books.Idle(Even), Books.Held(1500, Even1500)).Kind, Next(Books.Idle(Even), Books.Held(1500, Even1500)).HeldRpm));
    }

    [Fact]
    public void All_even_at_idle_and_held_is_done_or_a_matter_of_mixture_where_lambda_can_be_read()
    {
        var book = Books.TwoBanksBook(Books.Idle(Even), Books.Held(1500, Even1500), Books.Held(2500, Even2500));
        var byAir = BalanceAdvice.Of(book with { Meter = new MeterSettings() });
        var byGas = BalanceAdvice.Of(book);

        Assert.Equal((true, NextKind.Done), (byAir.IsBalanced, byAir.Next.Kind));
        Assert.Equal((true, ReadKinds.Lambda), (byGas.IsBalanced, byGas.Next.Read));
    }

    [Fact]
    public void A_likely_fault_is_looked_at_before_any_screw()
    {
        var leak = Books.Round(null, RearOpen, r => r with { Vacuum = r.Barrel switch { 7 => 51, 3 or 4 => 45, _ => 56 }, Lambda = r.Barrel == 7 ? 1.08 : 0.95, Header = 300 });

        var next = Next(leak, Books.Held(1500, Even1500), Books.Held(2500, Even2500));

        Assert.Equal((NextKind.Repair, "leakBelowPlate barrel 7"), (next.Kind, $"{next.Fault}"));
    }

    [Fact]
    public void Carburettors_on_stops_of_their_own_are_levelled_with_the_rods_off_and_idle_before_off_idle()
    {
        BalanceStep[] found = [Books.Idle(RearOpen), Books.Held(1500, Books.But(Books.TwoBanks, 9, (7, 8.3), (8, 8.3))), Books.Held(2500, Books.But(Books.TwoBanks, 15, (7, 14.2), (8, 14.2)))];
        var first = Next(found);
        Assert.True(first.Kind is NextKind.RodsOff or NextKind.Look, $"{first.What} {first.Fault}");

        var off = Next([.. found, new LookedAt("stop:2", 0), new LookedAt("stop:4", 0), new RodsTakenOff()]);
        Assert.Equal((NextKind.Read, null), (off.Kind, off.HeldRpm));

        var turn = Next([.. found, new LookedAt("stop:2", 0), new LookedAt("stop:4", 0), new RodsTakenOff(), Books.Idle(RearOpen), Books.Idle(RearOpen)]);
        Assert.Equal((NextKind.Turn, "stop:2"), (turn.Kind, turn.Adjuster?.Key));
        Assert.True(turn.Turns < 0);
        Assert.All(turn.Expect, e => Assert.True(e.Low <= e.Then && e.Then <= e.High && e.Then < e.Now));
    }

    [Fact]
    public void Only_what_was_moved_is_read_again_after_a_turn()
    {
        var next = Next(Books.Idle(RearOpen), Books.Held(1500, Even1500), Books.Held(2500, Even2500), new RodsTakenOff(), Books.Idle(RearOpen), new Turned("stop:2", -0.125));

        Assert.Equal(NextKind.Read, next.Kind);
        Assert.Equal([3, 4], next.Barrels);
    }

    [Fact]
    public void With_rods_off_and_idle_level_rods_are_offered_then_put_back()
    {
        BalanceStep[] level = [Books.Idle(RearOpen), Books.Held(1500, Even1500), Books.Held(2500, Even2500), new RodsTakenOff(), Books.Idle(Even), Books.Idle(Even)];
        Assert.Equal(NextKind.OfferRod, Next(level).Kind);

        var offered = Next([.. level, new LookedAt("rod:2", 0), new LookedAt("rod:4", 0), new LookedAt("bankrod", 0)]);
        Assert.Equal(NextKind.RodsOn, offered.Kind);

        var back = Next([.. level, new LookedAt("rod:2", 0), new LookedAt("rod:4", 0), new LookedAt("bankrod", 0), new RodsPutBack()]);
        Assert.Equal((NextKind.Read, null, 0), (back.Kind, back.HeldRpm, back.Barrels.Count));
    }

    [Fact]
    public void Off_idle_alone_out_is_a_matter_of_rods()
    {
        double[] Lag(double air) => Books.But(Books.TwoBanks, air, (5, 0.93 * air), (6, 0.93 * air), (7, 0.93 * air), (8, 0.93 * air));
        BalanceStep[] steps = [Books.Idle(Even), Books.Held(1500, Lag(9)), Books.Held(2500, Lag(15)), Books.Held(1500, Lag(9)), Books.Held(2500, Lag(15))];
        var next = Next(steps);

        Assert.True(next.Kind is NextKind.Turn && next.Adjuster!.Kind is AdjusterKind.BankRod && next.Turns > 0, $"{next.Who} {next.What}");
    }

    [Fact]
    public void Carburettors_in_line_are_brought_to_the_reference_by_their_couplings_with_nothing_taken_off()
    {
        var far = Books.But(Books.InLine, 4, (5, 2.7), (6, 2.7));
        var held = Books.But(Books.InLine, 9, (5, 7.7), (6, 7.7));
        var next = BalanceAdvice.Of(Books.Of(Books.InLine, Books.Idle(far), Books.Held(1500, held), Books.Held(2500, [.. held.Select(a => a + 6)]), Books.Idle(far))).Next;

        Assert.Equal((NextKind.Turn, "coupling:3"), (next.Kind, next.Adjuster?.Key));
        Assert.True(next.Turns > 0);
    }

    private static NextMove Next(params BalanceStep[] steps) => BalanceAdvice.Of(Books.TwoBanksBook(steps)).Next;
}
