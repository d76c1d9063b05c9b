using Tickover.Records.Opening;
using Tickover.Records.Safekeeping;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Safekeeping;

/// <summary>Backups are made while the work goes on, looked through, and put back.</summary>
public sealed class BackupTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private static string NewFile => Path.Combine(Scratch.NewFolder(), "backup.db");

    [Fact]
    public async Task A_backup_holds_everything_and_is_put_back_into_an_empty_folder()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        await open.KeepAsync("found", open.Hose(), open.Airflow(1, 3.9));
        await new PinBook(open.Store).SetAsync(open.Ruth.Id, "2468", null, Cancellation);
        var photograph = Id.New<Photograph>();
        await new PictureBook(open.Store).TakeInAsync(photograph, Pictures.Photographs.Jpeg(), Cancellation);
        var file = NewFile;

        var report = await RecordBackup.MakeAsync(open.Store, file, Cancellation);

        Assert.Equal((2L, 5, 1), (report.Print.LastAct, report.Print.AllItems, report.Pictures));
        Assert.Equal([file], Directory.GetFiles(Path.GetDirectoryName(file)!));
        var place = Opened.NewPlace();
        var restored = await RecordRestore.PutBackAsync(place, file, TimeProvider.System, Cancellation);
        Assert.Null(restored.Aside);
        using var again = await Opened.OpenAsync(place, Beginning.Expected);
        Assert.Equal(await PrintAsync(open.Store), await PrintAsync(again), (a, b) => a.Matches(b));
        Assert.Null(await new PinBook(again).TryAsync(open.Ruth.Id, "2468", Cancellation));
        Assert.NotEmpty((await new PictureBook(again).ReadAsync(photograph, PictureScale.Whole, Cancellation))!);
    }

    [Fact]
    public async Task A_backup_made_while_others_write_holds_every_act_up_to_its_last()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        var writer = Task.Run(
            async () =>
            {
                for (var k = 0; !stop.IsCancellationRequested; k++)
                {
                    await open.KeepAsync("read", open.Airflow(1 + (k % 6), 3.9));
                }
            },
            Cancellation);

        var reports = new List<BackupReport>();
        for (var k = 0; k < 3; k++)
        {
            reports.Add(await RecordBackup.MakeAsync(open.Store, NewFile, Cancellation));
            while ((await open.Store.JournalAsync(null, 1, Cancellation))[0].Number == reports[^1].Print.LastAct)
            {
                await Task.Delay(10, Cancellation);
            }
        }

        await stop.CancelAsync();
        await writer;
        Assert.All(reports, r => Assert.Equal(r.Print.LastAct, r.Print.Acts));
        Assert.True(reports[2].Print.LastAct > reports[0].Print.LastAct);
    }

    [Fact]
    public async Task The_record_replaced_is_kept_aside_whole()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = NewFile;
        await RecordBackup.MakeAsync(open.Store, file, Cancellation);
        await open.KeepAsync("found later", open.Hose());
        open.Dispose();
        var place = open.Store.Place;

        var report = await RecordRestore.PutBackAsync(place, file, new SetClock(new DateTimeOffset(2026, 11, 25, 12, 0, 0, TimeSpan.Zero)), Cancellation);

        Assert.False(report.WasAnother);
        Assert.StartsWith(Path.Combine(place.DataFolder, ".tickover", "replaced-2026-11-25-"), report.Aside, StringComparison.Ordinal);
        Assert.Equal(1L, Opened.Ask(report.Aside!, "SELECT COUNT(*) FROM Finding"));
        using var again = await Opened.OpenAsync(place, Beginning.Expected);
        Assert.Empty(await again.AllAsync<Finding>(Cancellation));
    }

    [Fact]
    public async Task Nothing_is_put_back_while_the_record_is_open()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = NewFile;
        await RecordBackup.MakeAsync(open.Store, file, Cancellation);
        await open.KeepAsync("found later", open.Hose());

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordRestore.PutBackAsync(open.Store.Place, file, TimeProvider.System, Cancellation));

        Assert.Contains("Stop that one first", trouble.Message, StringComparison.Ordinal);
        Assert.Single(await open.Store.AllAsync<Finding>(Cancellation));
        Assert.True((await open.KeepAsync("goes on", open.Hose())).IsKept);
    }

    [Fact]
    public async Task Any_number_of_programs_open_one_record()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        using var second = await Opened.OpenAsync(open.Store.Place, Beginning.Expected);

        Assert.Single(await second.AllAsync<Visit>(Cancellation));
    }

    [Fact]
    public async Task A_damaged_record_is_replaced_and_kept_aside_too()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = NewFile;
        await RecordBackup.MakeAsync(open.Store, file, Cancellation);
        open.Dispose();
        await File.WriteAllTextAsync(open.Store.Place.File, "not a database any more", Cancellation);

        var report = await RecordRestore.PutBackAsync(open.Store.Place, file, TimeProvider.System, Cancellation);

        Assert.Equal("not a database any more", await File.ReadAllTextAsync(report.Aside!, Cancellation));
        using var again = await Opened.OpenAsync(open.Store.Place, Beginning.Expected);
        Assert.Single(await again.AllAsync<Visit>(Cancellation));
    }

    [Fact]
    public async Task Another_workshops_record_is_put_in_place_with_its_note()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = NewFile;
        await RecordBackup.MakeAsync(open.Store, file, Cancellation);
        var place = await Opened.WithSomethingAsync();

        var report = await RecordRestore.PutBackAsync(place, file, TimeProvider.System, Cancellation);

        Assert.True(report.WasAnother);
        using var again = await Opened.OpenAsync(place, Beginning.Expected);
        Assert.Equal(open.Visit.Id, Assert.Single(await again.AllAsync<Visit>(Cancellation)).Id);
    }

    [Fact]
    public async Task A_backup_that_is_damaged_is_not_put_back()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        await new PictureBook(open.Store).TakeInAsync(Id.New<Photograph>(), Pictures.Photographs.Jpeg(), Cancellation);
        var file = NewFile;
        await RecordBackup.MakeAsync(open.Store, file, Cancellation);
        Opened.Run(file, "UPDATE Pictures SET Hash = 'ff'");
        var place = Opened.NewPlace();

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordRestore.PutBackAsync(place, file, TimeProvider.System, Cancellation));

        Assert.Contains("is damaged: the picture", trouble.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(place.DataFolder));
    }

    [Fact]
    public async Task What_is_there_already_is_not_written_over()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = NewFile;
        await File.WriteAllTextAsync(file, "mine", Cancellation);

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordBackup.MakeAsync(open.Store, file, Cancellation));

        Assert.Contains("there already", trouble.Message, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(file, Cancellation));
    }

    [Fact]
    public async Task A_disk_without_room_for_the_backup_is_told_and_no_file_is_left()
    {
        using var disk = Tmpfs.Mount("64k");
        using var open = await OpenRecord.BeginAsync(new SqliteHome());

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordBackup.MakeAsync(open.Store, Path.Combine(disk.Path, "backup.db"), Cancellation));

        Assert.Contains("The disk is full", trouble.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(disk.Path));
        Assert.True((await open.KeepAsync("goes on", open.Hose())).IsKept);
    }

    private static Task<RecordPrint> PrintAsync(RecordStore store) => store.ReadAsync(context => RecordPrint.OfAsync(context, null, Cancellation));
}
