using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>Every shape of the trade, in readings that are otherwise even: air flow, vacuum and lambda side by side, and how it goes on as the plates open (trade report 2.2, 2.11).</summary>
public sealed class FaultFinderTests
{
    private const double Vacuum = 56;
    private const double Pull = 9.6;                        // kPa lost to a kg/h more at idle: 0.85 of (101 - 56) kPa to 4 kg/h
    private static readonly (double? Held, double Air)[] Speeds = [(null, 4.0), (1500, 9.0), (2500, 15.0)];

    [Fact]
    public void Nothing_is_suspected_where_all_are_equal()
    {
        Assert.True(Advice((_, _, r) => r).OnlyScrews > 0.8);
    }

    [Theory]
    [InlineData(-0.25)]
    [InlineData(0.25)]
    public void Both_barrels_of_a_carburettor_too_shut_or_open_at_idle_are_its_stop_screw(double degrees)
    {
        Assert.True(Advice((held, at, r) => held is null && r.Barrel is 1 or 2 ? Plate(r, at, degrees) : r).OnlyScrews > 0.5);
    }

    [Fact]
    public void Air_equal_vacuum_low_lean_is_a_leak_below_the_plate()
    {
        First("leakBelowPlate barrel 3", (held, _, r) => r.Barrel == 3 ? r with { Vacuum = r.Vacuum - 5, Lambda = r.Lambda + 0.12 } : r);
    }

    [Fact]
    public void Air_equal_vacuum_low_lambda_normal_is_a_weak_cylinder()
    {
        First("weakCylinder barrel 6", (_, _, r) => r.Barrel == 6 ? r with { Vacuum = r.Vacuum - 8 } : r);
    }

    [Theory]
    [InlineData(-0.85)]
    [InlineData(0.85)]
    public void The_same_air_off_everywhere_is_a_plate_seated_askew(double air)
    {
        First("plateSeating barrel 3", (_, _, r) => r.Barrel == 3 ? r with { Air = r.Air + air, Vacuum = r.Vacuum - (Pull * air) } : r);
    }

    [Fact]
    public void The_same_part_off_everywhere_with_vacuum_as_before_is_the_meters_seal()
    {
        First("meterSeal barrel 5", (_, _, r) => r.Barrel == 5 ? r with { Air = 0.84 * r.Air } : r);
    }

    [Fact]
    public void The_far_barrel_low_by_an_angle_everywhere_is_a_twisted_spindle()
    {
        First("twistedSpindle barrel 4", (_, at, r) => r.Barrel == 4 ? Plate(r, at, -0.62) : r);
    }

    [Theory]
    [InlineData(-0.08)]
    [InlineData(0.08)]
    public void A_carburettor_right_at_idle_and_further_off_the_faster_is_a_lever(double part)
    {
        First("leverAngle carburettor 3", (held, _, r) => r.Barrel is 5 or 6 && held is { } rpm ? r with { Air = r.Air + (part * (rpm > 2000 ? 15 : 4.2)) } : r);
    }

    [Fact]
    public void A_carburettor_right_at_idle_and_low_by_an_angle_as_soon_as_it_opens_is_a_rod()
    {
        First("rodLength carburettor 2", (held, at, r) => r.Barrel is 3 or 4 && held is not null ? Plate(r, at, -0.62) : r);
    }

    [Fact]
    public void A_carburettor_open_by_an_angle_everywhere_is_held_off_its_stop_by_a_rod()
    {
        First("stopNotTouching carburettor 2", (_, at, r) => r.Barrel is 3 or 4 ? Plate(r, at, 0.6) : r);
    }

    [Fact]
    public void Vacuum_low_and_headers_hot_on_one_bank_with_equal_air_is_its_timing()
    {
        First("bankTiming bank 2", (_, _, r) => r.Barrel > 4 ? r with { Vacuum = r.Vacuum - 4.5, Header = r.Header + 36 } : r);
    }

    [Fact]
    public void Readings_of_one_carburettor_that_will_not_repeat_are_a_worn_spindle()
    {
        var wander = new[] { 0.5, -0.5, 0.45, -0.4 };
        IEnumerable<BalanceStep> steps = wander.Select(w => Books.Idle(Books.But(Books.TwoBanks, 4, (5, 4 + w), (6, 4 + w))));

        Assert.Equal("wornSpindle carburettor 3", BalanceAdvice.Of(Books.TwoBanksBook(steps)).Causes[0].Fault.ToString());
    }

    [Fact]
    public void What_was_looked_for_and_found_in_order_is_named_no_more()
    {
        var leak = new FaultPlace(BalanceFault.LeakBelowPlate, 3);
        IReadOnlyList<BalanceStep> steps = [.. Steps((_, _, r) => r.Barrel == 3 ? r with { Vacuum = r.Vacuum - 5, Lambda = r.Lambda + 0.12 } : r)];

        Assert.DoesNotContain(BalanceAdvice.Of(Books.TwoBanksBook([.. steps, new CheckedFor(leak, Found: false)])).Causes, c => c.Fault == leak);
        Assert.All(BalanceAdvice.Of(Books.TwoBanksBook(steps)).Causes, c => Assert.NotEmpty(c.Check));
    }

    [Fact]
    public void Held_rounds_that_pass_no_more_air_than_idle_are_judged_all_the_same()
    {
        var even = Books.All(Books.TwoBanks, 4);

        Assert.True(BalanceAdvice.Of(Books.TwoBanksBook(Books.Idle(even), Books.Held(1500, even), Books.Held(2500, even))).OnlyScrews > 0.5);
    }

    private static void First(string fault, Func<double?, double, BarrelReading, BarrelReading> with)
    {
        var causes = Advice(with).Causes;

        Assert.True(causes.Count > 0 && string.Equals(fault, causes[0].Fault.ToString(), StringComparison.Ordinal), string.Join(", ", causes.Select(c => $"{c.Fault} {c.Probability:0.00}")));
    }

    private static BalanceAdvice Advice(Func<double?, double, BarrelReading, BarrelReading> with) => BalanceAdvice.Of(Books.TwoBanksBook(Steps(with)));

    private static IEnumerable<BalanceStep> Steps(Func<double?, double, BarrelReading, BarrelReading> with) => Speeds.Select(s => Books.Round(
        s.Held, Books.All(Books.TwoBanks, s.Air), r => with(s.Held, s.Air, s.Held is null ? r with { Vacuum = Vacuum, Lambda = 0.95, Header = 300 } : r)));

    // a plate moved by an angle: air by the geometry, and at idle the vacuum it lets go
    private static BarrelReading Plate(BarrelReading reading, double at, double degrees)
    {
        var air = new NominalGains(Books.TwoBanks, idle: true, 4).PerDegree(at) * degrees;
        return reading with { Air = reading.Air + air, Vacuum = reading.Vacuum - (Pull * air) };
    }
}
