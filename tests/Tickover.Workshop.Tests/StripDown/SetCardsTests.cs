using Tickover.Workshop.StripDown.Cards;
using Tickover.Workshop.Tests.Visits.Measures;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Tests.StripDown;

public sealed class SetCardsTests
{
    private static readonly string Six = File.ReadAllText(Path.Combine(Repository.Root, "samples", "tern-2800.car.json"));

    [Fact]
    public void The_odd_jet_out_is_named_with_its_barrel_and_its_carburettor()
    {
        var book = new Notebook(Six);
        book.Round("idleJet", Moment.AsFound, "", "50", "50", "55", "50", "50", "50");

        var sheet = SetCards.Of(book.Record(), Stage.StripDown);

        var row = Row(sheet, "idleJet");
        Assert.Equal((SetStanding.Differs, "50"), (row.Standing, row.Usual));
        Assert.Equal(("Barrel 3", "55"), (Assert.Single(row.Odd).Place.Words(), row.Odd[0].Text));
        Assert.Equal([0, 1, 0], sheet.Cards.Select(c => c.Odd.Count));
        Assert.Equal("Idle jet 55 in barrel 3; 50 in the others", sheet.Cards[1].Odd[0]);
        Assert.Equal("One thing differs from barrel to barrel or from carburettor to carburettor.", sheet.Heading);
    }

    [Fact]
    public void A_size_that_is_the_same_everywhere_is_alike_and_what_nobody_noted_is_said_to_be_missing()
    {
        var book = new Notebook(Six);
        foreach (var barrel in new[] { "1", "2", "3", "5" })
        {
            book.Read("mainJet", barrel, "135", Moment.AsFound);
        }

        var row = Row(SetCards.Of(book.Record(), Stage.StripDown), "mainJet");

        Assert.Equal((SetStanding.Alike, "135"), (row.Standing, row.Usual));
        Assert.Equal("4, 6", string.Join(", ", row.Missing.Select(p => p.Name)));
    }

    [Fact]
    public void Three_of_one_and_three_of_another_have_no_odd_one()
    {
        var book = new Notebook(Six);
        book.Round("airCorrector", Moment.AsFound, "", "190", "190", "190", "185", "185", "185");

        var row = Row(SetCards.Of(book.Record(), Stage.StripDown), "airCorrector");

        Assert.Equal((SetStanding.Differs, "", 6), (row.Standing, row.Usual, row.Odd.Count));
    }

    [Theory]
    [InlineData("24.1", "24.4", "24.3", SetStanding.Alike)]
    [InlineData("24.1", "24.9", "24.2", SetStanding.Differs)]
    public void Floats_are_held_against_half_a_gram(string first, string second, string third, SetStanding standing)
    {
        var book = new Notebook(Six);
        book.Round("floatMass", Moment.AsFound, "", first, second, third);

        var row = Row(SetCards.Of(book.Record(), Stage.StripDown), "floatMass");

        Assert.Equal(standing, row.Standing);
        Assert.Equal(standing == SetStanding.Differs ? "2" : "", string.Concat(row.Odd.Select(o => o.Place.Name)));
    }

    [Fact]
    public void Stop_screws_need_not_be_alike_and_a_struck_reading_does_not_count()
    {
        var book = new Notebook(Six);
        book.Round("stopTurns", Moment.AsFound, "", "1", "0.5", "1");
        book.Round("pumpJet", Moment.AsFound, "", "40", "40", "40", "40", "40");
        book.Strike(book.Read("pumpJet", "6", "45", Moment.AsFound));

        var sheet = SetCards.Of(book.Record(), Stage.StripDown);

        Assert.Equal((SetStanding.NotCompared, "½ to 1\u2009turn"), (Row(sheet, "stopTurns").Standing, Row(sheet, "stopTurns").Usual));
        Assert.Equal(SetStanding.Alike, Row(sheet, "pumpJet").Standing);
    }

    [Fact]
    public void As_left_is_a_set_of_its_own()
    {
        var book = new Notebook(Six);
        book.Round("idleJet", Moment.AsFound, "", "50", "50", "55", "50", "50", "50");
        book.Round("idleJet", Moment.AsLeft, "", "50", "50", "50", "50", "50", "50");

        Assert.Equal(SetStanding.Alike, Row(SetCards.Of(book.Record(), Stage.Build), "idleJet").Standing);
    }

    [Fact]
    public void Without_a_description_there_is_one_card_and_nothing_is_noted()
    {
        var sheet = SetCards.Of(new Notebook().Record(), Stage.StripDown);

        Assert.Equal("Nothing is noted of these carburettors yet.", sheet.Heading);
        Assert.Equal("Barrel 1", Assert.Single(Assert.Single(sheet.Cards).Barrels).Words());
    }

    private static SetRow Row(SetSheet sheet, string measure) => sheet.Rows.First(r => string.Equals(r.Measure.Key, measure, StringComparison.Ordinal));
}
