using CsCheck;
using Tickover.Physics.Leaks;

namespace Tickover.Physics.Tests.Leaks;

public sealed class DecayTestTests
{
    private const double Air = 101_325;

    private static readonly DecayInstruments Usual = new() { GaugePascals = 5, ThermometerKelvins = 0.1 };

    [Fact]
    public void Fifty_litres_losing_200_pascals_in_ten_minutes()
    {
        // 0.050 m³ × 200 Pa / 600 s = 0.016667 Pa m³/s.
        var leak = Test([new(0, 10_000, 293.15, Air), new(600, 9_800, 293.15, Air)]).Leak();

        Assert.Equal(0.0166667, leak.PascalCubicMetresPerSecond, 1e-6);
        Assert.Equal(leak.WithoutTemperature, leak.PascalCubicMetresPerSecond, 1e-9);
    }

    [Fact]
    public void A_tank_that_only_cools_does_not_leak()
    {
        // One kelvin at 111,325 Pa is 380 Pa.
        var cooled = (10_000 + Air) * 292.15 / 293.15 - Air;
        var leak = Test([new(0, 10_000, 293.15, Air), new(600, cooled, 292.15, Air)]).Leak();

        Assert.Equal(380, 10_000 - cooled, 1.0);
        Assert.Equal(0, leak.PascalCubicMetresPerSecond, 1e-9);
        Assert.True(leak.WithoutTemperature > 0.03);
        Assert.False(leak.IsSeen);
    }

    [Fact]
    public void A_falling_barometer_is_not_a_leak()
    {
        var leak = Test([new(0, 2_000, 293.15, Air), new(600, 2_060, 293.15, Air - 60)]).Leak();

        Assert.Equal(0, leak.PascalCubicMetresPerSecond, 1e-9);
    }

    [Fact]
    public void A_leak_put_in_is_found_whatever_the_temperature_does() =>
        Gen.Select(Gen.Double[1e-4, 5e-3], Gen.Double[-2, 2], Gen.Double[0.01, 0.1], Gen.Int[2, 20]).Sample((q, warming, volume, n) =>
        {
            var readings = Enumerable.Range(0, n).Select(i => At(900.0 * i / (n - 1), q, warming, volume)).ToArray();
            var found = (Test(readings) with { VolumeCubicMetres = volume }).Leak().PascalCubicMetresPerSecond;
            return Math.Abs(found - q) < 0.01 * q + 1e-5;
        });

    [Fact]
    public void The_smallest_leak_seen_is_seen_nineteen_times_in_twenty_and_none_cried_once_in_twenty()
    {
        var noise = new Random(7);
        var smallest = Noisy(0, noise).Leak().SmallestSeen;
        var seen = Enumerable.Range(0, 2000).Count(_ => Noisy(smallest, noise).Leak().IsSeen) / 2000.0;
        var cried = Enumerable.Range(0, 2000).Count(_ => Noisy(0, noise).Leak().IsSeen) / 2000.0;

        Assert.InRange(seen, 0.93, 0.97);
        Assert.InRange(cried, 0.03, 0.07);
    }

    [Fact]
    public void A_test_as_long_as_it_says_sees_the_leak()
    {
        var test = Noisy(0, new Random(3)) with { Instruments = Usual with { UnseenDriftKelvins = 0.2 } };
        var seconds = test.SecondsToSee(2e-3);
        var longer = test with { Readings = [.. test.Readings.Select((r, i) => r with { Seconds = seconds * i / (test.Readings.Count - 1), GaugePascals = 2000, GasKelvins = 293.15 })] };

        Assert.Equal(2e-3, longer.Leak().SmallestSeen, 2e-5);
    }

    [Fact]
    public void Walls_that_spring_hide_a_part_of_the_leak()
    {
        var stiff = Test([new(0, 2_000, 293.15, Air), new(600, 1_900, 293.15, Air)]);
        var soft = stiff with { SpringCubicMetresPerPascal = 5e-8 };

        // 103,275 Pa × 5e-8 m³/Pa is 5.2 litres more of 50.
        Assert.Equal(1.103, soft.Leak().PascalCubicMetresPerSecond / stiff.Leak().PascalCubicMetresPerSecond, 0.001);
    }

    [Fact]
    public void A_fall_by_half_is_more_than_one_rate_can_tell() =>
        Assert.Equal(ValidityKind.Extrapolated, Test([new(0, 2_000, 293.15, Air), new(600, 1_000, 293.15, Air)]).Leak().Validity.Kind);

    [Fact]
    public void Times_have_to_rise() => Assert.Throws<InvalidOperationException>(() => Test([new(0, 2_000, 293.15, Air), new(0, 1_900, 293.15, Air)]).Leak());

    [Fact]
    public void Fifty_micrometres_at_a_tenth_of_a_bar_leak_a_sixtieth() =>
        Assert.Equal(50e-6, EquivalentHole.Diameter(0.016667, 10_000, Air, 293.15), 1e-6);

    private static DecayTest Test(IReadOnlyList<DecayReading> readings) => new() { Readings = readings, VolumeCubicMetres = 0.050, Instruments = Usual };

    private static DecayReading At(double seconds, double leak, double warming, double volume)
    {
        var kelvins = 293.15 + warming * seconds / 900;
        var pressure = (Air + 2000) / 293.15 * kelvins - leak * seconds / volume;
        return new DecayReading(seconds, pressure - Air, kelvins, Air);
    }

    private static DecayTest Noisy(double leak, Random noise) => Test(
        [.. Enumerable.Range(0, 4).Select(i => At(300 * i, leak, 0, 0.050)).Select(r => r with
        {
            GaugePascals = r.GaugePascals + 5 * Normal(noise),
            GasKelvins = r.GasKelvins + 0.1 * Normal(noise),
        })]);

    private static double Normal(Random noise) => Math.Sqrt(-2 * Math.Log(1 - noise.NextDouble())) * Math.Cos(2 * Math.PI * noise.NextDouble());
}
