using System.Text;
using System.Text.Json.Nodes;
using Tickover.Records.Carrying;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Carrying;

/// <summary>What is exported comes back equal, from either kind of database into either kind.</summary>
/// <param name="from">Gives the records that are exported.</param>
/// <param name="to">Gives the records that are imported into.</param>
public abstract class CarryingSuite(RecordHome from, RecordHome to)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_exported_and_imported_is_exported_equal_again()
    {
        using var open = await FullRecord.BeginAsync(from);
        var first = await ExportAsync(open.Store);
        using var other = await Opened.OpenAsync(to.NewPlace());

        var report = await RecordImport.ReadAsync(other, first, Cancellation);

        Assert.Empty(report.Complaints);
        Assert.Equal((0, 1), (report.Left, report.Pictures));
        var again = await ExportAsync(other);
        var (a, b) = (Zips.Entries(first), Zips.Entries(again));
        Assert.Equal(a.Keys, b.Keys, StringComparer.Ordinal);
        Assert.All(a.Keys.Where(k => k is not "manifest.json"), k => Assert.Equal(Encoding.UTF8.GetString(a[k]), Encoding.UTF8.GetString(b[k])));
        Assert.Equal(Manifest(a), Manifest(b));
    }

    [Fact]
    public async Task Order_numbers_and_undo_are_as_they_were()
    {
        using var open = await FullRecord.BeginAsync(from);
        using var other = await Opened.OpenAsync(to.NewPlace());
        await RecordImport.ReadAsync(other, await ExportAsync(open.Store), Cancellation);

        Assert.Equal(await JournalAsync(open.Store), await JournalAsync(other));
        var (here, there) = ((await open.LookAsync()), (await other.VisitAsync(open.Visit.Id, Cancellation))!);
        Assert.Equal(here.Readings.Select(r => r.Id), there.Readings.Select(r => r.Id));
        Assert.Single(await other.SearchAsync("hose BETWEEN", Cancellation));
        Assert.Single(await other.SearchAsync("edith", Cancellation));

        // Redo of what was undone last works in the new record as it would have in the old one.
        var redone = await other.RedoAsync(new StepBack { Key = Guid.NewGuid(), Device = "bench", Visit = open.Visit.Id }, Cancellation);
        Assert.Equal(ActEnding.Kept, redone.Ending);
        Assert.Equal((await JournalAsync(open.Store)).Count + 1, redone.Number);
    }

    [Fact]
    public async Task Importing_again_leaves_everything_as_it_is()
    {
        using var open = await FullRecord.BeginAsync(from);
        var export = await ExportAsync(open.Store);
        using var other = await Opened.OpenAsync(to.NewPlace());
        await RecordImport.ReadAsync(other, export, Cancellation);
        var before = await JournalAsync(other);

        var report = await RecordImport.ReadAsync(other, export, Cancellation);

        Assert.Empty(report.Complaints);
        Assert.Empty(report.Added);
        Assert.Equal((0, 0), (report.Acts, report.Pictures));
        Assert.Equal(report.Manifest.Counts.Where(c => c.Key is not ("acts" or "pictures")).Sum(c => c.Value), report.Left);
        Assert.Equal(before, await JournalAsync(other));
    }

    [Fact]
    public async Task What_reads_otherwise_here_is_told_and_nothing_is_taken_in()
    {
        using var open = await FullRecord.BeginAsync(from);
        var export = await ExportAsync(open.Store);
        using var other = await Opened.OpenAsync(to.NewPlace());
        await RecordImport.ReadAsync(other, export, Cancellation);
        var finding = Assert.Single(await other.AllAsync<Finding>(Cancellation));
        await other.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [finding with { Decision = "left", Severity = Severity.Watch }], Words = "changed here" }, Cancellation);
        await open.KeepAsync("later", open.Hose());
        var before = await JournalAsync(other);

        var report = await RecordImport.ReadAsync(other, await ExportAsync(open.Store), Cancellation);

        Assert.False(report.IsIn);
        Assert.Equal(["The finding \"Cross-pipe hose perished\" is here already and reads otherwise: severity, decision."], report.Complaints, StringComparer.Ordinal);
        Assert.Equal(before, await JournalAsync(other));
        Assert.Single(await other.AllAsync<Finding>(Cancellation));
    }

    [Fact]
    public async Task One_car_goes_into_a_record_that_has_its_own()
    {
        using var open = await FullRecord.BeginAsync(from);
        var gannet = await FullRecord.AddSecondCarAsync(open);
        var export = Zips.NewFile;
        await RecordExport.WriteAsync(open.Store, export, gannet.Id, Cancellation);
        using var other = await OpenRecord.BeginAsync(to);
        await other.KeepAsync("own house", new House { Id = House.TheOne, Name = "Another House" });

        var report = await RecordImport.ReadAsync(other.Store, export, Cancellation);

        Assert.Empty(report.Complaints);
        Assert.Empty(report.Renumbered);
        var history = (await other.Store.CarAsync(gannet.Id, Cancellation))!;
        Assert.Equal("Somebody Else", history.Owner!.Name);
        Assert.Equal("Float sticks", Assert.Single(Assert.Single(history.Visits).Findings).What);
        Assert.Equal("Another House", (await other.Store.WorkshopAsync(Cancellation)).House.Name);
        // Its own two, then the one that brought Ruth, who kept the car there, and the one that brought the car.
        Assert.Equal([4L, 3, 2, 1], (await other.Store.JournalAsync(null, 10, Cancellation)).Select(l => l.Number));
        Assert.DoesNotContain("Edith Marlow", string.Concat(Zips.Entries(export).Where(e => !e.Key.StartsWith("pictures", StringComparison.Ordinal)).Select(e => Encoding.UTF8.GetString(e.Value))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_visit_whose_number_is_taken_gets_the_next()
    {
        using var open = await FullRecord.BeginAsync(from);
        var export = Zips.NewFile;
        await RecordExport.WriteAsync(open.Store, export, open.Car.Id, Cancellation);
        using var other = await Opened.OpenAsync(to.NewPlace());
        var car = new CustomerCar { Name = "Brackwater Dunlin", Slug = "dunlin" };
        await other.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [car, new Visit { Car = car.Id }], Words = "own" }, Cancellation);

        var report = await RecordImport.ReadAsync(other, export, Cancellation);

        Assert.Equal([(1, 2)], report.Renumbered);
        Assert.Equal(2, (await other.VisitAsync(open.Visit.Id, Cancellation))!.Visit.Number);
        var again = await RecordImport.ReadAsync(other, export, Cancellation);
        Assert.Empty(again.Complaints);
        Assert.Empty(again.Added);

        // The next change starts from the version and the number that stand here.
        var visit = (await other.FindAsync(open.Visit.Id, Cancellation))!;
        Assert.True((await other.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [visit with { Summary = "done" }], Words = "summary" }, Cancellation)).IsKept);
    }

    [Fact]
    public async Task A_car_of_the_same_name_is_told()
    {
        using var open = await FullRecord.BeginAsync(from);
        var export = await ExportAsync(open.Store);
        using var other = await Opened.OpenAsync(to.NewPlace());
        await other.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [new CustomerCar { Name = "Its twin", Slug = open.Car.Slug }], Words = "own" }, Cancellation);

        var report = await RecordImport.ReadAsync(other, export, Cancellation);

        Assert.Contains("so does Its twin here", Assert.Single(report.Complaints), StringComparison.Ordinal);
        Assert.Empty(await other.AllAsync<Visit>(Cancellation));
    }

    private static async Task<string> ExportAsync(RecordStore store)
    {
        var file = Zips.NewFile;
        await RecordExport.WriteAsync(store, file, null, Cancellation);
        return file;
    }

    private static string Manifest(SortedDictionary<string, byte[]> entries)
    {
        var manifest = JsonNode.Parse(entries["manifest.json"])!.AsObject();
        manifest.Remove("record");
        manifest.Remove("exportedAt");
        return manifest.ToJsonString();
    }

    private static async Task<List<string>> JournalAsync(RecordStore store) =>
        [.. (await store.JournalAsync(null, 1000, Cancellation)).Select(l => $"{l.Number} {l.Words} {l.At:O} {l.Person} {l.Device} {l.Visit} {l.Undoes} {l.UndoneBy} {string.Join('|', l.Changes)}")];
}
