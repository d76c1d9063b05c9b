using Tickover.Physics.Gauges;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks;

namespace Tickover.Workshop.Tests.Tanks;

public sealed class TankAnalystTests
{
    private static readonly TankAnalysis Tern = TankAnalyst.Of(TankSamples.Tern);

    [Fact]
    public void A_box_has_the_table_and_the_unusable_fuel_of_a_box()
    {
        var analysis = TankAnalyst.Of(TankSamples.Read(TankSamples.Box()));

        // 0.5 x 0.3 m: 6.667 mm a litre; 10 mm under the mouth are 1.5 l.
        Assert.All(analysis.Table, r => Assert.Equal(r.Litres / 0.15, r.Tanks[0].DipMillimetres, 1e-6));
        Assert.Equal(30, analysis.Table[^1].Litres, 1e-9);
        Assert.Equal(1.5, analysis.UnusableLitres!.Value, 1e-9);
        Assert.Null(analysis.Sender);
    }

    [Theory]
    [InlineData("\"noseUp\": 10", 0.3, 0.25)]
    [InlineData("\"leftUp\": -10", 0.5, 0.15)]
    public void A_slope_leaves_a_wedge(string stance, double width, double toTheWall)
    {
        var analysis = TankAnalyst.Of(TankSamples.Read(TankSamples.Box($", \"stances\": [{{ \"name\": \"slope\", {stance} }}]")));

        // The mouth is in the middle, 10 mm up: a surface through it that falls 10 % meets the floor 100 mm from it.
        var litres = 1000 * width * 0.5 * 0.1 * (toTheWall + 0.1) * (toTheWall + 0.1);
        Assert.Equal(litres, analysis.Stances[0].UnusableLitres!.Value, 1e-6);
    }

    [Fact]
    public void A_bend_asks_for_more_fuel_than_the_level()
    {
        var bend = Assert.Single(Tern.Stances, s => s.Stance.Name.StartsWith("left-hand bend", StringComparison.Ordinal));

        Assert.True(bend.Stance.IsPassing);
        Assert.True(bend.UnusableLitres > Tern.UnusableLitres);
    }

    [Fact]
    public void A_fill_that_cannot_be_the_shape_is_told_so()
    {
        const string Fill = ", \"fill\": { \"levelled\": true, \"steps\": [{ \"litres\": 5, \"dip\": 90 }, { \"litres\": 10, \"dip\": 100 }, { \"litres\": 15, \"dip\": 190 }, { \"litres\": 20, \"dip\": 195 }] }";

        var analysis = TankAnalyst.Of(TankSamples.Read(TankSamples.Box(Fill)));

        Assert.Equal(FillVerdict.Differ, analysis.Fill!.Verdict);
        Assert.Equal(4, FillRow.Of(analysis.Fill).Count);
    }

    [Fact]
    public void The_open_sender_is_named()
    {
        const string Open = ", \"gauge\": { \"family\": \"240-33\" }, \"readings\": [{ \"litres\": 3, \"ohms\": \"open\", \"needle\": -0.05 }, { \"litres\": 14, \"ohms\": \"open\", \"needle\": -0.05 }, { \"litres\": 29, \"ohms\": \"open\", \"needle\": -0.06 }]";

        var sender = TankAnalyst.Of(TankSamples.Read(TankSamples.Box(Open))).Sender!;

        Assert.Equal(SenderFault.Open, sender.Diagnosis.Faults[0].Fault);
        Assert.Empty(sender.Cures);
    }

    [Fact]
    public void A_sender_without_a_tank_is_judged_by_what_the_tank_holds()
    {
        const string Document = "{ \"format\": \"tickover-tank-1\", \"name\": \"sender\", \"capacity\": 60, \"readings\": [{ \"litres\": 0, \"ohms\": 240, \"needle\": 0 }, { \"litres\": 30, \"ohms\": 138, \"needle\": 0.5 }, { \"litres\": 60, \"ohms\": 34, \"needle\": 1 }] }";

        var analysis = TankAnalyst.Of(TankSamples.Read(Document));

        Assert.Empty(analysis.Table);
        Assert.Equal(SenderFault.None, analysis.Sender!.Diagnosis.Faults[0].Fault);
        Assert.Equal("240-33", analysis.Sender.Gauge!.Key);
    }

    [Theory]
    [InlineData(0, 0, 100)]
    [InlineData(0.2, 0, 100)]
    [InlineData(0, -0.2, 100)]
    public void A_moment_tells_dip_and_cover_in_the_middle_of_a_box_whatever_its_slope(double ahead, double left, double dip)
    {
        var moment = TankMoment.Of(TankAnalyst.Of(TankSamples.Read(TankSamples.Box())), 15, new Tilt(ahead, left))!;

        // Half full, the surface turns about the middle, where stick and pick-up are.
        Assert.Equal(dip, moment.DipMillimetres, 1e-6);
        Assert.Equal((dip - 10) / Math.Sqrt(1 + ahead * ahead + left * left), moment.CoverMillimetres[0]!.Value, 1e-6);
        Assert.True(moment.IsFed);
        Assert.Equal(15, moment.Shares.Sum(), 1e-9);
    }

    [Fact]
    public void A_moment_of_linked_tanks_shares_the_fuel_and_tilts_it_to_the_low_side()
    {
        var (level, tilted) = (TankMoment.Of(Tern, 30, Tilt.Level)!, TankMoment.Of(Tern, 30, new Tilt(0, 0.1))!);

        Assert.Equal(level.Shares[0], level.Shares[1], 1e-6);
        Assert.True(tilted.Shares[1] > tilted.Shares[0], "The left side is up.");
        Assert.Equal(30, tilted.Shares.Sum(), 1e-6);
    }

    [Fact]
    public void The_poor_earth_of_the_sample_is_named_and_its_fill_agrees_with_the_shape()
    {
        Assert.Equal(SenderFault.AddedResistance, Tern.Sender!.Diagnosis.Faults[0].Fault);
        Assert.NotEqual(FillVerdict.Differ, Tern.Fill!.Verdict);
        Assert.All(FillRow.Of(Tern.Fill), r => Assert.InRange(r.Litres, r.FuelLitres - 2 * r.BandLitres, r.FuelLitres + 2 * r.BandLitres));
    }

    [Fact]
    public void The_caution_comes_first_and_nothing_is_called_safe()
    {
        Assert.True(Tern.TankAdvice[0].IsDanger);
        Assert.All(Tern.TankAdvice.Concat(Tern.SenderAdvice), a => Assert.DoesNotContain("safe", a.Heading + a.Words, StringComparison.OrdinalIgnoreCase));
    }
}
