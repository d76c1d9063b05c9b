using System.Text;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Opening;

namespace Tickover.Records.Tests.Opening;

/// <summary>Which files are opened and which are refused, and that what is refused is left as it was.</summary>
public sealed class FileOpeningTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Where_one_was_expected_no_empty_one_is_made()
    {
        var place = Opened.NewPlace();

        var words = await Opened.RefusalAsync(place, Beginning.Expected);

        Assert.Contains("no record", words, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(place.DataFolder));
    }

    [Fact]
    public async Task Where_the_file_has_gone_no_empty_one_is_made()
    {
        var place = await Opened.WithSomethingAsync();
        File.Delete(place.File);

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("restore a backup", words, StringComparison.Ordinal);
        Assert.False(File.Exists(place.File));
    }

    [Fact]
    public async Task A_file_that_goes_while_it_is_open_is_not_begun_anew()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        SqliteConnection.ClearAllPools();
        File.Delete(open.Store.Place.File);

        var trouble = await Assert.ThrowsAsync<Workshop.Visits.RecordTroubleException>(() => open.KeepAsync("found", open.Hose()));

        Assert.Contains("cannot be opened", trouble.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(open.Store.Place.File));
    }

    [Fact]
    public async Task A_new_record_lets_readers_in_while_it_is_written()
    {
        var place = await Opened.WithSomethingAsync();

        Assert.Equal("wal", Opened.Ask(place.File, "PRAGMA journal_mode"));
    }

    [Fact]
    public async Task Every_connection_forces_each_commit_to_the_disk()
    {
        using var store = await Opened.OpenAsync(Opened.NewPlace());

        Assert.Equal(2, await store.ReadAsync(context => context.Database.SqlQuery<int>($"SELECT synchronous AS Value FROM pragma_synchronous").SingleAsync(Cancellation)));
    }

    [Fact]
    public async Task A_database_of_another_program_is_left_as_it_is()
    {
        var place = Opened.NewPlace();
        Opened.Run(place.File, "CREATE TABLE Songs (Title TEXT); INSERT INTO Songs VALUES ('one')", SqliteOpenMode.ReadWriteCreate);
        var before = await File.ReadAllBytesAsync(place.File, Cancellation);

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("another program", words, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(place.File, Cancellation));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Dear Sirs, the car is ready.")]
    [InlineData("SQLite format 2")]
    public async Task What_is_no_database_is_left_as_it_is(string text)
    {
        var place = Opened.NewPlace();
        await File.WriteAllTextAsync(place.File, text, Cancellation);

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("is no database", words, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(place.File, Cancellation));
    }

    [Fact]
    public async Task A_record_of_a_newer_program_is_refused()
    {
        var place = await Opened.WithSomethingAsync();
        Opened.Run(place.File, "INSERT INTO __EFMigrationsHistory VALUES ('20990101000000_Later', '99')");

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("newer Tickover", words, StringComparison.Ordinal);
        Assert.Contains("20990101000000_Later", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_exchanged_record_is_noticed()
    {
        var place = await Opened.WithSomethingAsync();
        var other = await Opened.WithSomethingAsync();
        File.Copy(other.File, place.File, overwrite: true);

        Assert.Contains("another record", await Opened.RefusalAsync(place), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{ \"record\": ")]
    [InlineData("null")]
    public async Task A_note_that_cannot_be_read_is_told(string text)
    {
        var place = await Opened.WithSomethingAsync();
        var note = Path.Combine(place.DataFolder, ".tickover", "record.json");
        await File.WriteAllTextAsync(note, text, Cancellation);

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("cannot be read", words, StringComparison.Ordinal);
        Assert.Contains(note, words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_killed_beginning_left_behind_is_cleared_away()
    {
        var place = Opened.NewPlace();
        await File.WriteAllTextAsync(place.File + ".new", "half", Cancellation);
        await File.WriteAllTextAsync(place.File + ".new-wal", "half", Cancellation);

        using var store = await Opened.OpenAsync(place);

        Assert.Equal(["workshop.db"], Directory.GetFiles(place.DataFolder).Select(f => Path.GetFileName(f)).Where(f => !f.EndsWith("-wal", StringComparison.Ordinal) && !f.EndsWith("-shm", StringComparison.Ordinal)), StringComparer.Ordinal);
        Assert.Equal(0, (await store.SizeAsync(Cancellation)).Visits);
    }

    [Fact]
    public async Task A_record_without_its_stamp_is_refused()
    {
        var place = await Opened.WithSomethingAsync();
        Opened.Run(place.File, "DELETE FROM Stamps");

        Assert.Contains("never finished", await Opened.RefusalAsync(place), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_lock_of_a_killed_upgrade_is_taken_away()
    {
        var place = await Opened.WithSomethingAsync();
        Opened.Run(place.File, "CREATE TABLE IF NOT EXISTS __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL); INSERT INTO __EFMigrationsLock VALUES (1, '2026-01-01')");
        using var store = await Opened.OpenAsync(place);

        await store.ReadAsync(async context =>
        {
            await FileOpening.ClearStaleLockAsync(context, Cancellation);
            return 0;
        });

        Assert.Equal(0L, Opened.Ask(place.File, "SELECT COUNT(*) FROM __EFMigrationsLock"));
    }

    [Fact]
    public async Task A_copy_is_put_aside_before_an_upgrade()
    {
        var place = await Opened.WithSomethingAsync();

        await FileOpening.KeepCopyAsync(place, "20261125183914_First", Cancellation);

        Assert.Equal(1L, Opened.Ask(Path.Combine(place.DataFolder, ".tickover", "before-upgrade", "after-20261125183914_First.db"), "SELECT COUNT(*) FROM Visit"));
    }

    [Fact]
    public async Task Two_programs_do_not_begin_one_record_at_once()
    {
        var place = Opened.NewPlace();
        await using var taken = FolderLock.Take(place);

        Assert.Contains("Another Tickover", await Opened.RefusalAsync(place), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damaged_pages_are_noticed_and_the_file_is_left_as_it_was()
    {
        var place = await Opened.WithSomethingAsync();
        var bytes = await File.ReadAllBytesAsync(place.File, Cancellation);
        var journal = (long)Opened.Ask(place.File, "SELECT rootpage FROM sqlite_master WHERE name = 'Changes' AND type = 'table'")!;
        var pageSize = (long)Opened.Ask(place.File, "PRAGMA page_size")!;
        Encoding.ASCII.GetBytes("scratched disk ").CopyTo(bytes, (int)((journal - 1) * pageSize));
        await File.WriteAllBytesAsync(place.File, bytes, Cancellation);

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("is damaged", words, StringComparison.Ordinal);
        Assert.Contains("tickover restore", words, StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(place.File, Cancellation));
    }

    [Fact]
    public async Task A_file_cut_short_is_refused()
    {
        var place = await Opened.WithSomethingAsync();
        await using (var file = new FileStream(place.File, FileMode.Open))
        {
            file.SetLength(file.Length / 2);
        }

        Assert.Contains("is damaged", await Opened.RefusalAsync(place), StringComparison.Ordinal);
    }
}
