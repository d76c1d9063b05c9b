using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Opening;

/// <summary>Disk full, nothing writable, held by another program, clock set back: words instead of losses.</summary>
public sealed class HardTimesTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_full_disk_is_told_and_nothing_is_half_kept_and_it_goes_on_when_there_is_room()
    {
        using var disk = Tmpfs.Mount("2m");
        using var store = await Opened.OpenAsync(new RecordPlace(disk.Path));
        var car = new CustomerCar { Name = "Samphire Gannet 1500", Slug = "gannet" };
        Assert.True((await KeepAsync(store, car)).IsKept);
        var note = new string('x', 8000);
        var kept = 0;
        RecordTroubleException? full = null;
        while (full is null && kept < 1000)
        {
            try
            {
                Assert.True((await KeepAsync(store, new Owner { Name = "Somebody", Note = note }, new Owner { Name = "Else", Note = note })).IsKept);
                kept++;
            }
            catch (RecordTroubleException trouble)
            {
                full = trouble;
            }
        }

        Assert.NotNull(full);
        Assert.Contains("The disk is full", full.Message, StringComparison.Ordinal);
        Assert.Equal(2 * kept, (await store.AllAsync<Owner>(Cancellation)).Count);
        Assert.Equal(1 + kept, (await store.JournalAsync(null, 10_000, Cancellation)).Count);

        disk.Grow("16m");

        Assert.Equal(2 + kept, (await KeepAsync(store, new Owner { Name = "Room again", Note = note })).Number);
    }

    [Fact]
    public async Task A_disk_full_from_the_start_leaves_no_record_behind()
    {
        using var disk = Tmpfs.Mount("64k");
        var place = new RecordPlace(disk.Path);

        Assert.Contains("The disk is full", await Opened.RefusalAsync(place), StringComparison.Ordinal);
        Assert.False(File.Exists(place.File));

        disk.Grow("16m");
        using var store = await Opened.OpenAsync(place);
        Assert.Equal(0, (await store.SizeAsync(Cancellation)).Cars);
    }

    [Fact]
    public async Task A_folder_that_may_not_be_written_is_told()
    {
        using var disk = Tmpfs.Mount("8m");
        var place = new RecordPlace(disk.Path);
        (await Opened.OpenAsync(place)).Dispose();
        disk.MakeReadOnly();

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("may be read and written", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_held_by_another_program_is_told_after_the_time_out_and_goes_on_after_it()
    {
        var place = (await Opened.WithSomethingAsync()) with { Patience = TimeSpan.FromMilliseconds(300) };
        using var store = await Opened.OpenAsync(place);
        using var other = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = place.File, Pooling = false }.ConnectionString);
        other.Open();
        var held = other.BeginTransaction();
        var watch = Stopwatch.StartNew();

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => KeepAsync(store, new Owner { Name = "Somebody" }));

        Assert.Contains("Another program holds", trouble.Message, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed, TimeSpan.FromMilliseconds(250), TimeSpan.FromSeconds(10));
        Assert.Empty(await store.AllAsync<Owner>(Cancellation));
        held.Rollback();
        Assert.True((await KeepAsync(store, new Owner { Name = "Somebody" })).IsKept);
    }

    [Fact]
    public async Task A_clock_set_back_leaves_the_order_of_the_acts()
    {
        var clock = new SetClock(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        using var store = await Opened.OpenAsync(Opened.NewPlace(), clock: clock);
        for (var k = 0; k < 5; k++)
        {
            await KeepAsync(store, new Owner { Name = k.ToString(CultureInfo.InvariantCulture) });
            clock.Now = clock.Now.AddDays(-1);
        }

        Assert.Equal(["0", "1", "2", "3", "4"], (await store.AllAsync<Owner>(Cancellation)).Select(o => o.Name), StringComparer.Ordinal);
        Assert.Equal([5L, 4, 3, 2, 1], (await store.JournalAsync(null, 10, Cancellation)).Select(l => l.Number));
        Assert.Equal(ActEnding.Kept, (await store.UndoAsync(new StepBack { Key = Guid.NewGuid(), Device = "" }, Cancellation)).Ending);
        Assert.True((await store.AllAsync<Owner>(Cancellation))[4].Removed);
    }

    private static Task<ActOutcome> KeepAsync(RecordStore store, params RecordItem[] items) =>
        store.KeepAsync(new Act { Key = Guid.NewGuid(), Items = items, Words = "kept" }, Cancellation);
}
