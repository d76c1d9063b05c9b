using System.Globalization;
using Tickover.Records.Safekeeping;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Safekeeping;

/// <summary>Which backups are kept, and that one is made each day.</summary>
public sealed class BackupRotaTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Seven_days_and_four_weeks_are_kept_of_a_long_row()
    {
        var today = new DateOnly(2026, 11, 25);
        var days = Enumerable.Range(0, 100).Select(d => today.AddDays(-d));

        var kept = BackupDays.Kept(days, today);

        // 25 November 2026 is a Wednesday (ISO week 48): seven days back to the 19th, and the Sundays of weeks 47, 46 and 45.
        Assert.Equal(
            [25, 24, 23, 22, 21, 20, 19, 15, 8],
            kept.OrderDescending().Select(d => d.Day));
    }

    [Fact]
    public void Todays_is_kept_with_the_clock_set_back()
    {
        var today = new DateOnly(2020, 1, 1);

        Assert.Contains(today, BackupDays.Kept(Enumerable.Range(0, 30).Select(d => new DateOnly(2026, 11, 25).AddDays(-d)).Append(today), today));
    }

    [Fact]
    public async Task One_backup_is_made_each_day_and_strange_files_are_left()
    {
        var clock = new SetClock(new DateTimeOffset(2026, 10, 1, 12, 0, 0, TimeSpan.Zero));
        using var store = await Opened.OpenAsync(Opened.NewPlace(), clock: clock);
        var folder = Path.Combine(Scratch.NewFolder(), "backups");
        var rota = new BackupRota(store, folder, _ => { });
        await rota.MakeTodaysAsync(Cancellation);
        string[] strange = ["workshop-notes.db", "workshop-2020-13-45.db", "mine.txt"];
        foreach (var file in strange)
        {
            await File.WriteAllTextAsync(Path.Combine(folder, file), "mine", Cancellation);
        }

        Assert.Null(await rota.MakeTodaysAsync(Cancellation));
        for (var day = 0; day < 12; day++)
        {
            clock.Now = clock.Now.AddDays(1);
            Assert.NotNull(await rota.MakeTodaysAsync(Cancellation));
        }

        var days = Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Except(strange, StringComparer.Ordinal).Order(StringComparer.Ordinal);
        Assert.Equal(new[] { 4, 7, 8, 9, 10, 11, 12, 13 }.Select(d => string.Create(CultureInfo.InvariantCulture, $"workshop-2026-10-{d:D2}.db")), days, StringComparer.Ordinal);
        Assert.All(strange, f => Assert.True(File.Exists(Path.Combine(folder, f))));
    }

    [Fact]
    public async Task A_rota_tells_what_it_made_and_stops_when_told()
    {
        using var store = await Opened.OpenAsync(Opened.NewPlace());
        using var stop = new CancellationTokenSource();
        var told = new TaskCompletionSource<string>();
        var folder = Scratch.NewFolder();

        var running = new BackupRota(store, folder, told.SetResult).RunAsync(stop.Token);

        Assert.Contains("Backup made", await told.Task.WaitAsync(TimeSpan.FromSeconds(60), Cancellation), StringComparison.Ordinal);
        await stop.CancelAsync();
        await running.WaitAsync(TimeSpan.FromSeconds(30), Cancellation);
    }

    [Fact]
    public async Task A_rota_tells_why_it_made_none()
    {
        using var store = await Opened.OpenAsync(Opened.NewPlace());
        var file = Path.GetTempFileName();

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => new BackupRota(store, file, _ => { }).MakeTodaysAsync(Cancellation));

        Assert.Contains(file, trouble.Message, StringComparison.Ordinal);
    }
}
