using Tickover.Records.Opening;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Cars;

/// <summary>What the shelf of car documents has to do on the record, on whatever database it lies.</summary>
/// <param name="home">Gives each test a record of its own.</param>
public abstract class CarShelfSuite(RecordHome home)
{
    private static readonly CarId Tern = CarId.Read("tern")!;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_saved_document_is_read_back_and_listed()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);

        shelf.Save(Tern, Repository.Sample("tern-2800"));

        Assert.Equal(Repository.Sample("tern-2800"), shelf.Read(Tern)!.Document);
        Assert.Equal("Larkfield Tern 2800", shelf.Read(Tern)!.Reading.Car!.Name);
        Assert.Equal(["tern"], shelf.List().Select(c => c.Id.Text), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_new_name_makes_the_customers_car_with_the_documents_name()
    {
        using var store = await OpenAsync(new SetClock(new DateTimeOffset(2026, 11, 25, 12, 0, 0, TimeSpan.Zero)));
        var shelf = new RecordShelf(store);

        shelf.Save(Tern, Repository.Sample("tern-2800"));
        shelf.Save(Tern, Repository.Sample("tern-2800"));

        var car = Assert.Single(await store.AllAsync<CustomerCar>(Cancellation));
        Assert.Equal(("tern", "Larkfield Tern 2800"), (car.Slug, car.Name));
        var descriptions = await store.AllAsync<CarDescription>(Cancellation);
        Assert.Equal(2, descriptions.Count);
        Assert.All(descriptions, d => Assert.Equal((car.Id, new DateOnly(2026, 11, 25), "changed on the page"), (d.Car, d.Since, d.Reason)));
        Assert.All(await store.JournalAsync(null, 10, Cancellation), line => Assert.Equal("cars", line.Device));
    }

    [Fact]
    public async Task Undo_steps_back_one_save_at_a_time_and_then_says_there_is_no_more()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);
        shelf.Save(Tern, "first");
        shelf.Save(Tern, "second");
        shelf.Save(Tern, "third");

        Assert.Equal(2, shelf.Read(Tern)!.EarlierVersions);
        Assert.True(shelf.Undo(Tern));
        Assert.Equal("second", shelf.Read(Tern)!.Document);
        Assert.True(shelf.Undo(Tern));
        Assert.Equal("first", shelf.Read(Tern)!.Document);
        Assert.False(shelf.Undo(Tern));
        Assert.Equal("first", shelf.Read(Tern)!.Document);
    }

    [Fact]
    public async Task A_car_taken_off_comes_back_by_undo()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);
        shelf.Save(Tern, "kept");

        Assert.True(shelf.Remove(Tern));
        Assert.Null(shelf.Read(Tern));
        Assert.Empty(shelf.List());
        Assert.False(shelf.Remove(Tern));
        Assert.True(shelf.Undo(Tern));
        Assert.Equal("kept", shelf.Read(Tern)!.Document);
    }

    [Fact]
    public async Task Saving_a_car_that_was_taken_off_puts_it_back_with_the_new_text()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);
        shelf.Save(Tern, "old");
        shelf.Remove(Tern);

        shelf.Save(Tern, "new");

        Assert.Equal("new", shelf.Read(Tern)!.Document);
        Assert.Single(await store.AllAsync<CustomerCar>(Cancellation));
    }

    [Fact]
    public async Task Undo_of_one_car_leaves_the_others_alone()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);
        var gannet = CarId.Read("gannet")!;
        shelf.Save(Tern, "first");
        shelf.Save(Tern, "second");
        shelf.Save(gannet, "gannet");

        Assert.True(shelf.Undo(Tern));

        Assert.Equal("first", shelf.Read(Tern)!.Document);
        Assert.Equal("gannet", shelf.Read(gannet)!.Document);
        Assert.False(shelf.Undo(CarId.Read("osprey")!));
    }

    [Fact]
    public async Task What_cannot_be_read_is_listed_with_its_faults()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);

        shelf.Save(CarId.Read("broken")!, "{ \"format\": ");

        var listed = Assert.Single(shelf.List());
        Assert.Null(listed.Reading.Car);
        Assert.NotEmpty(listed.Reading.Faults);
    }

    [Fact]
    public async Task A_document_beyond_the_limit_is_refused_and_nothing_is_kept()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);

        var trouble = Assert.Throws<RecordTroubleException>(() => shelf.Save(Tern, new string('x', ICarShelf.LongestDocument + 1)));

        Assert.Contains("longer than", trouble.Message, StringComparison.Ordinal);
        Assert.Null(shelf.Read(Tern));
        Assert.Empty(await store.AllAsync<CustomerCar>(Cancellation));
    }

    [Fact]
    public async Task A_car_without_a_description_is_not_on_the_shelf()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var shelf = new RecordShelf(open.Store);

        Assert.Empty(shelf.List());
        Assert.Null(shelf.Read(CarId.Read(open.Car.Slug)!));

        shelf.Save(CarId.Read(open.Car.Slug)!, "now described");

        Assert.Equal(open.Car.Id, Assert.Single(await open.Store.AllAsync<CustomerCar>(Cancellation)).Id);
        Assert.Single(shelf.List());
    }

    [Fact]
    public async Task What_is_saved_with_the_clock_set_back_is_still_the_latest()
    {
        var clock = new SetClock(new DateTimeOffset(2026, 11, 25, 12, 0, 0, TimeSpan.Zero));
        using var store = await OpenAsync(clock);
        var shelf = new RecordShelf(store);
        shelf.Save(Tern, "first");
        clock.Now = clock.Now.AddYears(-5);

        shelf.Save(Tern, "second");

        Assert.Equal("second", shelf.Read(Tern)!.Document);
        Assert.True(shelf.Undo(Tern));
        Assert.Equal("first", shelf.Read(Tern)!.Document);
    }

    [Fact]
    public async Task Savers_at_the_same_time_lose_no_version()
    {
        using var store = await OpenAsync();
        var shelf = new RecordShelf(store);
        shelf.Save(Tern, "start");

        await Parallel.ForAsync(0, 20, (i, _) =>
        {
            shelf.Save(Tern, $"version {i}");
            return ValueTask.CompletedTask;
        });

        Assert.Equal(20, shelf.Read(Tern)!.EarlierVersions);
    }

    private Task<RecordStore> OpenAsync(TimeProvider? clock = null) => RecordOpening.OpenAsync(home.NewPlace(), Beginning.Allowed, clock ?? TimeProvider.System, Cancellation);
}
