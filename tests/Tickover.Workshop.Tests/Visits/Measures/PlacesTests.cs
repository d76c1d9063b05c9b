using Tickover.Workshop.Tests.Cars;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class PlacesTests
{
    [Theory]
    [InlineData("osprey-v8", PlaceKind.Bank, 2)]
    [InlineData("osprey-v8", PlaceKind.Cylinder, 8)]
    [InlineData("osprey-v8", PlaceKind.Barrel, 8)]
    [InlineData("tern-2800", PlaceKind.Bank, 1)]
    [InlineData("tern-2800", PlaceKind.Barrel, 6)]
    [InlineData("tern-2800", PlaceKind.Carburettor, 3)]
    [InlineData("gannet-1500", PlaceKind.Cylinder, 4)]
    public void The_car_document_names_the_places(string sample, PlaceKind kind, int count)
    {
        var record = new Notebook(Repository.Sample(sample)).Record();

        Assert.Equal(Enumerable.Range(1, count).Select(n => new Place(kind, $"{n}")), Places.Of(record, kind));
        Assert.False(Places.MayBeNamed(record, kind));
    }

    [Fact]
    public void The_whole_car_is_one_place_whatever_is_known() => Assert.Equal([Place.WholeCar], Places.Of(new Notebook().Record(), PlaceKind.Car));

    [Fact]
    public void Tanks_are_those_on_the_car_during_the_visit()
    {
        var book = new Notebook(CarTexts.Twin);
        book.Components.AddRange(
        [
            new Component { Kind = ComponentKind.Tank, Place = "right" },
            new Component { Kind = ComponentKind.Tank, Place = "left", TakenOffOn = new DateOnly(2026, 3, 10) },
            new Component { Kind = ComponentKind.Tank, Place = "Left", FittedOn = new DateOnly(2026, 3, 10) },
            new Component { Kind = ComponentKind.Tank, Place = "boot", TakenOffOn = new DateOnly(2019, 1, 1) },
            new Component { Kind = ComponentKind.Pump, Place = "rear" },
        ]);

        Assert.Equal("left, right", string.Join(", ", Places.Of(book.Record(), PlaceKind.Tank).Select(p => p.Name)));
        Assert.True(Places.MayBeNamed(book.Record(), PlaceKind.Tank));
    }

    [Theory]
    [InlineData(PlaceKind.Tank, "main")]
    [InlineData(PlaceKind.Barrel, "1")]
    [InlineData(PlaceKind.Bank, "1")]
    public void Where_nothing_is_known_there_is_one_place_and_others_may_be_named(PlaceKind kind, string name)
    {
        var record = new Notebook().Record();

        Assert.Equal([new Place(kind, name)], Places.Of(record, kind));
        Assert.True(Places.MayBeNamed(record, kind));
    }

    [Fact]
    public void A_place_once_read_stays_in_the_list()
    {
        var book = new Notebook();
        book.Read("hoseMarking", "servo hose", "none", Moment.AsFound);
        book.Read("choke", "2", "32 mm", Moment.AsFound);

        Assert.Contains(new Place(PlaceKind.Run, "servo hose"), Places.Of(book.Record(), PlaceKind.Run));
        Assert.Equal([new Place(PlaceKind.Barrel, "2")], Places.Of(book.Record(), PlaceKind.Barrel));
    }

    [Fact]
    public void A_faulty_document_leaves_the_places_open_and_breaks_nothing()
    {
        var record = new Notebook("{ not json").Record();

        Assert.True(Places.MayBeNamed(record, PlaceKind.Barrel));
        Assert.Null(Places.CarOf(record));
    }
}
