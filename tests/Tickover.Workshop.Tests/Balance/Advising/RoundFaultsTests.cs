using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>Bad readings are said plainly; what cannot be makes a round void, what is odd only a remark.</summary>
public sealed class RoundFaultsTests
{
    private static readonly double[] Fair = [4.9, 5.0, 4.0, 3.9, 4.2, 4.1, 4.3, 4.4];

    public static TheoryData<string, string> Voids => new()
    {
        { "air -1", "-1 kg/h is no airflow" }, { "air 400", "400 kg/h is no airflow" }, { "rpm 0", "0 rpm is no engine speed" }, { "rpm 90000", "90000 rpm is no engine speed" },
        { "vacuum 450", "Was it read in mmHg or inHg?" }, { "lambda 14.7", "divide by 14.7" }, { "header 4000", "no temperature of a header" }, { "barrel 9", "Barrel 9 is not on this engine, which has 8" },
    };

    [Theory]
    [MemberData(nameof(Voids))]
    public void What_cannot_be_makes_the_round_void(string slip, string said)
    {
        var round = Books.Round(null, Fair, r => r.Barrel == 4 ? Slip(r, slip) : r).Round;

        Assert.Contains(said, RoundFaults.Void(round, Books.TwoBanksBook()), StringComparison.Ordinal);
        Assert.Contains(said, RoundFaults.Void(round with { Readings = Books.Idle(Fair).Round.Readings, Again = Slip(round.Readings[0], slip) }, Books.TwoBanksBook()) + (slip.StartsWith("barrel", StringComparison.Ordinal) ? said : ""), StringComparison.Ordinal);
    }

    [Fact]
    public void Fair_readings_are_neither_void_nor_odd()
    {
        var round = Books.Round(null, Fair, r => r with { Vacuum = 54, Lambda = 0.95, Header = 300 }).Round;

        Assert.Empty(RoundFaults.Void(round, Books.TwoBanksBook()));
        Assert.Empty(RoundFaults.Remarks(round, Books.TwoBanksBook()));
    }

    [Fact]
    public void A_barrel_missed_is_named_and_so_is_one_read_twice()
    {
        var all = Books.Idle(Fair).Round;

        Assert.Contains("Barrel 3, 7 was not read: read them", Said(all with { Readings = [.. all.Readings.Where(r => r.Barrel is not (3 or 7))] }), StringComparison.Ordinal);
        Assert.Contains("Barrel 3 was read 2 times (4, 4.5 kg/h); the last counts", Said(all with { Readings = [.. all.Readings, new(3) { Air = 4.5, Rpm = 900 }] }), StringComparison.Ordinal);
    }

    [Fact]
    public void No_speed_all_equal_and_digits_changed_round_are_said()
    {
        Assert.Contains("No engine speed was noted", Said(Books.Round(null, Fair, r => r with { Rpm = null }).Round), StringComparison.Ordinal);
        Assert.Contains("All 8 read 4 kg/h to the digit", Said(Books.Idle(Books.All(Books.TwoBanks, 4)).Round), StringComparison.Ordinal);
        Assert.Contains("Barrel 4 reads 9.3 kg/h", Said(Books.Idle(Books.But(Books.TwoBanks, 4.1, (4, 9.3), (5, 4))).Round), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2.2, "Was it read in lb/h?")]
    [InlineData(3.6, "Another unit, or readings of another engine?")]
    [InlineData(0.2, "Another unit, or readings of another engine?")]
    public void Another_unit_or_another_engine_is_suspected_by_swept_volume(double times, string said)
    {
        Assert.Contains(said, Said(Books.Idle([.. Fair.Select(a => times * a)]).Round), StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_of_mercury_and_another_speed_than_the_one_held_are_said()
    {
        Assert.Contains("18 inHg is 61 kPa", Said(Books.Round(null, Fair, r => r with { Vacuum = 18 }).Round), StringComparison.Ordinal);
        Assert.Contains("Barrel 2 was read at 900 rpm in a round held at 1500", Said(Books.Round(1500, Fair, r => r.Barrel == 2 ? r with { Rpm = 900 } : r).Round), StringComparison.Ordinal);
    }

    private static string Said(BalanceRound round) => string.Join(' ', RoundFaults.Remarks(round, Books.TwoBanksBook()));

    private static BarrelReading Slip(BarrelReading reading, string slip)
    {
        var (what, value) = (slip.Split(' ')[0], double.Parse(slip.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture));
        return what switch
        {
            "air" => reading with { Air = value },
            "rpm" => reading with { Rpm = value },
            "vacuum" => reading with { Vacuum = value },
            "lambda" => reading with { Lambda = value },
            "header" => reading with { Header = value },
            _ => reading with { Barrel = (int)value },
        };
    }
}
