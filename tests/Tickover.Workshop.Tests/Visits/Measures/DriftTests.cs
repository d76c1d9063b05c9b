using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class DriftTests
{
    private static readonly DateOnly Spring = new(2026, 3, 2);
    private static readonly DateOnly Autumn = new(2026, 9, 7);

    [Fact]
    public void The_hand_over_round_stands_beside_the_next_visits_as_found()
    {
        // 4.0, 4.0, 4.0 and 4.0 handed over; 4.0, 4.0, 4.0 and 3.0 found: mean 3.75, the fourth 20 % under it.
        var drift = Assert.Single(Of(["4.0", "4.0", "4.0", "4.0"], ["4.0", "4.0", "4.0", "3.0"]));

        Assert.Equal(DriftMeaning.SomeMoved, drift.Meaning);
        Assert.Equal([false, false, false, true], drift.Places.Select(p => p.Moved));
        Assert.Equal(-1.0 / 3600, drift.Places[3].ChangeSi, 1e-12);
        Assert.Equal(-0.2, drift.Places[3].ChangeOfDeviation, 1e-9);
        Assert.Equal(-0.0625, drift.ChangeOfMean, 1e-9);
        Assert.Equal((182, 140), (drift.Days, drift.Distance));
        Assert.StartsWith("Barrel 4 moved against the others. Linkage wear moves it slowly;", drift.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void All_barrels_higher_alike_is_no_loss_of_balance() =>
        Assert.Equal(DriftMeaning.AllAlike, Assert.Single(Of(["3.6", "3.7", "3.8"], ["4.5", "4.6", "4.7"])).Meaning);

    [Fact]
    public void What_is_accepted_between_barrels_is_no_drift() =>
        Assert.Equal(DriftMeaning.Held, Assert.Single(Of(["3.6", "3.7", "3.8"], ["3.7", "3.7", "3.7"])).Meaning);

    [Fact]
    public void A_visit_that_read_nothing_is_passed_over()
    {
        var middle = new Notebook(arrived: new DateOnly(2026, 6, 1)) { Visit = new Visit { Number = 2 } }.Record();

        var drift = Assert.Single(Drift.Of(History(Handed("3.6", "3.8"), middle, Found("3.6", "2.6"))));

        Assert.Equal((1, 3), (drift.Earlier.Number, drift.Later.Number));
    }

    [Fact]
    public void Without_a_round_to_compare_there_is_nothing_to_say()
    {
        Assert.Empty(Drift.Of(History(Handed("3.6", "3.8"))));
        Assert.Empty(Drift.Of(History()));
        Assert.Empty(Drift.Of(History(Found("3.6", "3.8"), Found("3.6", "3.8"))));
    }

    [Theory]
    [InlineData("2025-12-31", null, "left tank")]
    [InlineData("2026-01-01", "first", "left tank")]
    [InlineData("2026-03-02", "second, kept later", "left tank")]
    [InlineData("2026-04-01", "second, kept later", "new left tank")]
    public void The_car_at_a_date_is_what_was_on_it_then(string day, string? reason, string tank)
    {
        var history = History() with
        {
            Descriptions =
            [
                new CarDescription { Since = new DateOnly(2026, 1, 1), Reason = "first", Kept = 1 },
                new CarDescription { Since = Spring, Reason = "second, kept later", Kept = 3 },
                new CarDescription { Since = Spring, Reason = "second", Kept = 2 },
            ],
            Components =
            [
                new Component { What = "left tank", TakenOffOn = new DateOnly(2026, 4, 1) },
                new Component { What = "new left tank", FittedOn = new DateOnly(2026, 4, 1) },
                new Component { What = "a slip", Removed = true },
            ],
        };

        var car = CarAtDate.Of(history, DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(reason, car.Description?.Reason);
        Assert.Equal(tank, Assert.Single(car.Components).What);
    }

    private static IReadOnlyList<MeasureDrift> Of(string[] handedOver, string[] found) => Drift.Of(History(Handed(handedOver), Found(found)));

    private static CarHistory History(params VisitRecord[] visits) => new(new CustomerCar(), null, [], [], visits);

    private static VisitRecord Handed(params string[] typed)
    {
        var book = new Notebook(arrived: Spring) { Visit = new Visit { Number = 1, LeftOn = Spring.AddDays(7), OdometerOut = 41_000 } };
        book.Round("idleAirflow", Moment.AsLeft, "", typed);
        return book.Record();
    }

    private static VisitRecord Found(params string[] typed)
    {
        var book = new Notebook(arrived: Autumn) { Visit = new Visit { Number = 3, OdometerIn = 41_140 } };
        book.Round("idleAirflow", Moment.AsFound, "", typed);
        return book.Record();
    }
}
