using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class BeforeAndAfterTests
{
    private const double KilogramsPerHour = 1.0 / 3600;

    [Fact]
    public void Spread_deviation_and_rpm_of_a_round_are_those_counted_by_hand()
    {
        // 3.0, 3.5, 4.0 and 4.5 kg/h: mean 3.75, spread 1.5, deviations -20, -6.7, +6.7 and +20 %.
        var book = new Notebook();
        book.Round("idleAirflow", Moment.AsFound, "3.1", "3.0", "3.5", "4.0", "4.5");

        var spread = Only(book).AsFound!;

        Assert.Equal(3.75, spread.MeanSi / KilogramsPerHour, 1e-9);
        Assert.Equal(1.5, spread.SpreadSi / KilogramsPerHour, 1e-9);
        Assert.Equal([-0.2, -0.0667, 0.0667, 0.2], spread.Places.Select(p => Math.Round(p.DeviationPart, 4)));
        Assert.Equal(0.2, spread.LargestDeviationPart, 1e-9);
        Assert.Equal((900, 930), (spread.LowestRpm, spread.HighestRpm));
        Assert.Equal([Verdict.Low, Verdict.Within, Verdict.Within, Verdict.High], spread.Places.Select(p => p.Verdict));
        Assert.Equal(Verdict.High, spread.Verdict);
    }

    [Fact]
    public void Where_the_instruments_band_straddles_the_limit_it_cannot_be_told()
    {
        // Mean 3.8; 4.2 lies 0.4 above it. Allowed is 0.5, the meter is good to 0.25: 0.15 to 0.65.
        var book = new Notebook { With = Notebook.Meter };
        book.Round("idleAirflow", Moment.AsFound, "", "3.6", "3.6", "3.8", "4.2");

        var spread = Only(book).AsFound!;

        Assert.Equal(Verdict.CannotBeTold, spread.Places[3].Verdict);
        Assert.Equal("cannot be told", spread.Verdict.Words());
        Assert.Equal(0.25, spread.Places[0].Reading.BandSi!.Value / KilogramsPerHour, 1e-9);
        Assert.Equal(0.25 * Math.Sqrt(2), spread.SpreadBandSi!.Value / KilogramsPerHour, 1e-9);
        Assert.Equal("in date, checked 10 January 2026", spread.Places[0].Reading.Standing!.Words);
    }

    [Fact]
    public void As_found_stands_beside_as_left_with_the_change()
    {
        var book = new Notebook();
        book.Round("idleAirflow", Moment.AsFound, "", "3.0", "4.5");
        book.Round("idleAirflow", Moment.Working, "", "3.2", "4.0");
        book.Round("idleAirflow", Moment.AsLeft, "", "3.7", "3.8");

        var compared = Only(book);

        Assert.Equal([("1", "3.0 kg/h", "3.7 kg/h"), ("2", "4.5 kg/h", "3.8 kg/h")], compared.Rows.Select(r => (r.Place.Name, r.AsFound!.Reading.Typed, r.AsLeft!.Reading.Typed)));
        Assert.Equal(0.7, compared.Rows[0].ChangeSi!.Value / KilogramsPerHour, 1e-9);
        Assert.Equal(Verdict.High, compared.AsFound!.Verdict);
        Assert.Equal(Verdict.Within, compared.AsLeft!.Verdict);
        Assert.Equal(new DateOnly(2026, 3, 2), compared.Rows[0].AsLeft!.On);
    }

    [Fact]
    public void Struck_and_corrected_readings_do_not_count()
    {
        var book = new Notebook();
        book.Strike(book.Read("choke", "1", "34 mm", Moment.AsFound));
        book.Correct(book.Read("choke", "2", "23 mm", Moment.AsFound), "32 mm");
        book.Read("choke", "3", "32 mm", Moment.AsFound);

        var rows = Only(book).Rows;

        Assert.Equal([("2", "32 mm"), ("3", "32 mm")], rows.Select(r => (r.Place.Name, r.AsFound!.Reading.Typed)));
    }

    [Fact]
    public void A_reading_whose_correction_was_struck_holds_again()
    {
        var book = new Notebook();
        var first = book.Read("choke", "1", "32 mm", Moment.AsFound);
        book.Correct(first, "23 mm");
        var correction = book.Record().Readings[^1];
        book.Strike(correction);

        Assert.Equal("32 mm", Only(book).Rows.Single().AsFound!.Reading.Typed);
    }

    [Fact]
    public void A_void_round_is_named_and_the_one_before_it_holds()
    {
        var book = new Notebook();
        book.Round("idleAirflow", Moment.AsLeft, "3.6", "3.6", "3.7");
        book.Round("idleAirflow", Moment.AsLeft, "4.2", "3.6", "3.9");

        var compared = Only(book);

        Assert.Equal("3.7 kg/h", compared.Rows[1].AsLeft!.Reading.Typed);
        Assert.Equal(3.65, compared.AsLeft!.MeanSi / KilogramsPerHour, 1e-9);
        Assert.StartsWith("Barrel 1 moved by 0.60\u2009kg/h", Assert.Single(compared.VoidRounds).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void No_reading_is_a_reading_and_stays_out_of_the_spread()
    {
        var book = new Notebook();
        book.Round("idleAirflow", Moment.AsFound, "", "3.0", "3.5");
        var record = book.Record();
        record = record with { Readings = [.. record.Readings, new Reading { Measure = "idleAirflow", Place = new Place(PlaceKind.Barrel, "3"), NoReading = "trumpet will not seal", Moment = Moment.AsFound }] };

        var compared = Assert.Single(BeforeAndAfter.Of(record));

        Assert.Equal("trumpet will not seal", compared.Rows[2].AsFound!.Reading.NoReading);
        Assert.Equal(2, compared.AsFound!.Places.Count);
    }

    [Fact]
    public void A_single_value_is_judged_by_its_own_limit()
    {
        var book = new Notebook();
        book.Read("spindleClearance", "1", "0.08 mm", Moment.AsFound);
        book.Read("spindleClearance", "2", "0.16 mm", Moment.AsFound);

        Assert.Equal([Verdict.Within, Verdict.High], Only(book).Rows.Select(r => r.AsFound!.Verdict));
    }

    [Fact]
    public void A_measure_nobody_knows_any_more_is_left_out_and_breaks_nothing()
    {
        var record = new Notebook().Record() with { Readings = [new Reading { Measure = "gone", Si = 1, Moment = Moment.AsLeft }] };

        Assert.Empty(BeforeAndAfter.Of(record));
    }

    [Theory]
    [InlineData("3.85", false)]
    [InlineData("3.35", false)]
    [InlineData("3.86", true)]
    [InlineData("3.34", true)]
    public void A_round_is_void_once_its_first_barrel_moved_by_more_than_a_quarter(string again, bool isVoid)
    {
        var book = new Notebook();
        book.Round("idleAirflow", Moment.Working, again, "3.6", "3.7", "3.8");

        var round = Assert.Single(Rounds.Of(book.Record()));

        Assert.Equal(isVoid, round.IsVoid);
        Assert.Equal(3, round.Readings.Count);
        Assert.Equal("3.6 kg/h", round.Readings[0].Typed);
        Assert.Equal(again + " kg/h", round.Again!.Typed);
    }

    [Fact]
    public void The_first_barrel_read_twice_at_the_start_is_no_check_at_the_end()
    {
        var book = new Notebook();
        var round = Guid.NewGuid();
        book.Read("idleAirflow", "1", "3.0", Moment.Working, round);
        book.Read("idleAirflow", "1", "3.6", Moment.Working, round);
        book.Read("idleAirflow", "2", "3.7", Moment.Working, round);

        var put = Assert.Single(Rounds.Of(book.Record()));

        Assert.Null(put.Again);
        Assert.False(put.IsVoid);
        Assert.Equal("3.6 kg/h", put.Readings[0].Typed);
    }

    private static MeasureComparison Only(Notebook book) => Assert.Single(BeforeAndAfter.Of(book.Record()));
}
