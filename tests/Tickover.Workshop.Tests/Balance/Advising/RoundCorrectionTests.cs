using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>What drift and speed put into a round is taken out of it.</summary>
public sealed class RoundCorrectionTests
{
    private static readonly MeterSettings Fine = new() { AirKilogramsPerHour = 0.005, AirPart = 0.001 };

    [Fact]
    public void A_made_up_drift_is_found_and_taken_out()
    {
        // eight equal barrels, air rising by 4 % from the first reading to the same barrel read again last
        var readings = Enumerable.Range(0, 9).Select(i => new BarrelReading((i % 8) + 1) { Air = 4 * (1 + (0.04 * i / 8)) }).ToList();
        var round = new BalanceRound { Number = 1, Readings = readings[..8], Again = readings[8] };

        var corrected = RoundCorrection.Of(round, Fine);

        Assert.All(corrected, c => Assert.InRange(c.Air, 4.08 - 0.02, 4.08 + 0.02));
        Assert.InRange(round.Readings[7].Air!.Value - round.Readings[0].Air!.Value, 0.13, 0.15);
    }

    [Theory]
    [InlineData(null, 0.5)]
    [InlineData(1500.0, 1.0)]
    public void What_the_speed_put_in_is_taken_out(double? held, double exponent)
    {
        var speeds = new[] { 1450.0, 1480, 1500, 1520, 1550 };
        var round = new BalanceRound { Number = 1, HeldRpm = held, Readings = [.. speeds.Select((rpm, i) => new BarrelReading(i + 1) { Air = 9 * Math.Pow(rpm / 1500, exponent), Rpm = rpm })] };

        var corrected = RoundCorrection.Of(round, new MeterSettings());

        Assert.All(corrected, c => Assert.Equal(9, c.Air, 0.01));
        Assert.True(corrected[0].Variance > corrected[2].Variance);
    }

    [Fact]
    public void A_slip_in_the_speed_moves_no_reading_by_more_than_an_eighth()
    {
        var round = new BalanceRound { Number = 1, Readings = [new(1) { Air = 4, Rpm = 900 }, new(2) { Air = 4, Rpm = 9000 }, new(3) { Air = 4, Rpm = 900 }] };

        Assert.All(RoundCorrection.Of(round, new MeterSettings()), c => Assert.InRange(c.Air, 4 / 1.125, 4 * 1.125));
    }

    [Fact]
    public void Without_the_first_read_again_the_last_is_known_less_well_than_the_middle()
    {
        var round = new BalanceRound { Number = 1, Readings = [.. Enumerable.Range(1, 8).Select(b => new BarrelReading(b) { Air = 4 })] };
        var proved = round with { Again = new BarrelReading(1) { Air = 4 } };

        Assert.True(RoundCorrection.Of(round, Fine)[7].Variance > 1.5 * RoundCorrection.Of(round, Fine)[4].Variance);
        Assert.True(RoundCorrection.Of(proved, Fine)[7].Variance < RoundCorrection.Of(round, Fine)[7].Variance);
    }

    [Fact]
    public void Of_a_barrel_read_twice_the_last_counts_and_one_without_air_is_left_out()
    {
        var round = new BalanceRound { Number = 1, Readings = [new(1) { Air = 4 }, new(2), new(1) { Air = 4.4 }] };

        var one = Assert.Single(RoundCorrection.Of(round, new MeterSettings()));

        Assert.Equal((1, 4.4), (one.Barrel, Math.Round(one.Air, 6)));
    }
}
