using Tickover.Web.Cars;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests.Cars;

public sealed class CarFolderTests : IDisposable
{
    private static readonly CarId Tern = CarId.Read("tern")!;
    private readonly string _path = Directory.CreateTempSubdirectory("tickover-shelf-").FullName;

    public void Dispose() => Directory.Delete(_path, recursive: true);

    [Fact]
    public void A_saved_document_is_read_back_and_listed()
    {
        var folder = new CarFolder(_path);

        folder.Save(Tern, Repository.Sample("tern-2800"));

        Assert.Equal("Larkfield Tern 2800", folder.Read(Tern)!.Reading.Car!.Name);
        Assert.Equal(["tern"], folder.List().Select(c => c.Id.Text), StringComparer.Ordinal);
    }

    [Fact]
    public void Undo_steps_back_one_save_at_a_time_and_then_says_there_is_no_more()
    {
        var folder = new CarFolder(_path);
        folder.Save(Tern, "first");
        folder.Save(Tern, "second");
        folder.Save(Tern, "third");

        Assert.Equal(2, folder.Read(Tern)!.EarlierVersions);
        Assert.True(folder.Undo(Tern));
        Assert.Equal("second", folder.Read(Tern)!.Document);
        Assert.True(folder.Undo(Tern));
        Assert.Equal("first", folder.Read(Tern)!.Document);
        Assert.False(folder.Undo(Tern));
        Assert.Equal("first", folder.Read(Tern)!.Document);
    }

    [Fact]
    public void A_car_taken_off_comes_back_by_undo()
    {
        var folder = new CarFolder(_path);
        folder.Save(Tern, "kept");

        Assert.True(folder.Remove(Tern));
        Assert.Null(folder.Read(Tern));
        Assert.False(folder.Remove(Tern));
        Assert.True(folder.Undo(Tern));
        Assert.Equal("kept", folder.Read(Tern)!.Document);
    }

    [Fact]
    public void A_save_leaves_nothing_half_written_behind()
    {
        var folder = new CarFolder(_path);

        for (var i = 0; i < 5; i++)
        {
            folder.Save(Tern, $"version {i}");
        }

        Assert.Equal(["tern.json"], Directory.GetFiles(_path).Select(Path.GetFileName), StringComparer.Ordinal);
    }

    [Fact]
    public void A_document_keeps_its_place_when_it_is_saved_again()
    {
        Directory.CreateDirectory(Path.Combine(_path, "gannet"));
        File.WriteAllText(Path.Combine(_path, "gannet", "car.json"), "old");
        File.WriteAllText(Path.Combine(_path, "osprey.car.json"), "old");
        var folder = new CarFolder(_path);

        folder.Save(CarId.Read("gannet")!, "new");
        folder.Save(CarId.Read("osprey")!, "new");

        Assert.Equal("new", File.ReadAllText(Path.Combine(_path, "gannet", "car.json")));
        Assert.Equal("new", File.ReadAllText(Path.Combine(_path, "osprey.car.json")));
        Assert.Equal(2, folder.List().Count);
    }

    [Fact]
    public void What_cannot_be_read_is_listed_with_its_faults()
    {
        File.WriteAllText(Path.Combine(_path, "broken.json"), "{ \"format\": ");
        File.WriteAllText(Path.Combine(_path, "huge.json"), new string('x', ICarShelf.LongestDocument + 1));
        var list = new CarFolder(_path).List();

        Assert.Equal(["broken", "huge"], list.Select(c => c.Id.Text), StringComparer.Ordinal);
        Assert.All(list, c => Assert.Null(c.Reading.Car));
        Assert.All(list, c => Assert.NotEmpty(c.Reading.Faults));
        Assert.Contains("1 MB", list[1].Reading.Faults[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_with_an_odd_name_still_has_an_address()
    {
        File.WriteAllText(Path.Combine(_path, "Larkfield Tern (1969).json"), Repository.Sample("tern-2800"));

        Assert.Equal("larkfield-tern-1969", Assert.Single(new CarFolder(_path).List()).Id.Text);
    }

    [Fact]
    public async Task Savers_at_the_same_time_lose_no_version()
    {
        var folder = new CarFolder(_path);
        folder.Save(Tern, "start");

        await Parallel.ForAsync(0, 20, (i, _) =>
        {
            folder.Save(Tern, $"version {i}");
            return ValueTask.CompletedTask;
        });

        Assert.Equal(20, folder.Read(Tern)!.EarlierVersions);
    }
}
