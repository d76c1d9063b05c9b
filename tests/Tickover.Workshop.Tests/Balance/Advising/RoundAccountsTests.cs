using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>What a round says: mean, spread, standing of every barrel; and when it says nothing.</summary>
public sealed class RoundAccountsTests
{
    [Fact]
    public void Barrels_stand_against_their_mean_and_limit()
    {
        var account = Account(Books.Idle(4, 4, 4, 4, 4, 4.45, 2.5, 5.0));

        Assert.Equal(Standing.Within, account.Barrels[0].Standing);
        Assert.Equal(Standing.CannotTell, account.Barrels[5].Standing);
        Assert.Equal(Standing.Low, account.Barrels[6].Standing);
        Assert.Equal(Standing.High, account.Barrels[7].Standing);
        Assert.Equal(2.5, account.Spread, 1e-9);
        Assert.False(account.AllWithin);
        Assert.Equal(0.5 / account.Mean, account.Barrels[0].LimitPart, 1e-9);
    }

    [Fact]
    public void A_limit_is_tighter_off_idle()
    {
        var even = Books.But(Books.TwoBanks, 4, (3, 4.3));
        double[] more = [.. even.Select(a => 2 * a)];

        Assert.True(Account(Books.Idle(even)).AllWithin);
        Assert.False(Account(Books.Held(1500, more)).AllWithin);
    }

    [Fact]
    public void Barrels_within_limits_do_not_make_up_for_banks_apart()
    {
        Assert.False(Account(Books.Idle(4.2, 4.2, 4.2, 4.2, 3.8, 3.8, 3.8, 3.8)).AllWithin);
    }

    [Theory]
    [InlineData(4.2, false)]
    [InlineData(4.3, true)]
    [InlineData(3.7, true)]
    public void A_round_whose_first_barrel_moved_is_void_and_says_so(double again, bool isVoid)
    {
        var round = Books.Idle(Books.All(Books.TwoBanks, 4)).Round with { Again = new BarrelReading(1) { Air = again, Rpm = 900 } };
        var advice = BalanceAdvice.Of(Books.TwoBanksBook(new RoundRead(round)));

        Assert.Equal(isVoid, advice.Rounds[0].IsVoid);
        Assert.Equal(isVoid, advice.Next.What.Contains("again", StringComparison.Ordinal));
        Assert.Equal(8, advice.Rounds[0].Barrels.Count(b => b.Air is not null));
    }

    [Fact]
    public void A_void_round_teaches_nothing()
    {
        var good = Books.Idle(Books.All(Books.TwoBanks, 4));
        var wild = new RoundRead(Books.Idle(Books.All(Books.TwoBanks, 7)).Round with { Again = new BarrelReading(1) { Air = 5, Rpm = 900 } });

        Assert.Equal(4, Books.Model(Books.TwoBanksBook(good, wild)).Idle!.Mean, 0.05);
    }

    [Fact]
    public void What_was_moved_since_makes_its_own_barrels_hollow_and_stands_before_the_next_round()
    {
        var even = Books.All(Books.TwoBanks, 4);
        var accounts = RoundAccounts.Of(Books.TwoBanksBook(Books.Idle(even), new Turned("stop:2", 0.25), new Turned("mixture:7", 0.25), Books.Idle(even)), Books.Meter);

        Assert.Equal([3, 4], accounts[0].Barrels.Where(b => b.IsHollow).Select(b => b.Barrel));
        Assert.DoesNotContain(accounts[1].Barrels, b => b.IsHollow);
        Assert.Contains("stop screw: in", accounts[1].Before, StringComparison.Ordinal);
    }

    private static RoundAccount Account(RoundRead round) => RoundAccounts.Of(Books.TwoBanksBook(round), Books.Meter)[0];
}
