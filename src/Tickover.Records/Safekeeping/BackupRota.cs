using System.Globalization;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Safekeeping;

/// <summary>Makes a backup each day and keeps seven daily and four weekly ones.</summary>
/// <param name="store">The open record.</param>
/// <param name="folder">Where the backups lie; best on another disk. Only files named like its own are ever deleted there.</param>
/// <param name="told">Gets one sentence on each backup made, or on why none was.</param>
public sealed class BackupRota(RecordStore store, string folder, Action<string> told)
{
    private const string Prefix = "workshop-";
    private const string Suffix = ".db";
    private const string DayForm = "yyyy-MM-dd";

    /// <summary>How often it is looked whether a new day has begun.</summary>
    private static readonly TimeSpan Interval = TimeSpan.FromMinutes(10);

    /// <summary>Makes backups until it is stopped; a backup that fails is told and tried again.</summary>
    /// <param name="cancellation">Stops it.</param>
    public async Task RunAsync(CancellationToken cancellation)
    {
        while (!cancellation.IsCancellationRequested)
        {
            try
            {
                if (await MakeTodaysAsync(cancellation) is { } report)
                {
                    told($"Backup made and looked through: {report.File}, {report.Print.Acts} acts, {report.Pictures} pictures.");
                }

                await Task.Delay(Interval, store.Clock, cancellation);
            }
            catch (RecordTroubleException trouble)
            {
                told($"No backup was made. {trouble.Message}");
                await Task.Delay(Interval, store.Clock, cancellation);
            }
            catch (OperationCanceledException)
            {
                return;
            }
        }
    }

    /// <summary>Makes today's backup unless it is there, and takes away those that are kept no longer.</summary>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>What was made; null where today's is there already.</returns>
    /// <exception cref="RecordTroubleException">It could not be made; then none was taken away either.</exception>
    public async Task<BackupReport?> MakeTodaysAsync(CancellationToken cancellation = default)
    {
        var today = DateOnly.FromDateTime(store.Clock.GetLocalNow().DateTime);
        var file = Path.Combine(folder, Prefix + today.ToString(DayForm, CultureInfo.InvariantCulture) + Suffix);
        if (File.Exists(file))
        {
            return null;
        }

        try
        {
            Directory.CreateDirectory(folder);
            var report = await RecordBackup.MakeAsync(store, file, cancellation);
            Prune(today);
            return report;
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, folder);
        }
    }

    private void Prune(DateOnly today)
    {
        var files = Directory.EnumerateFiles(folder, Prefix + "*" + Suffix).Select(f => (File: f, Day: DayOf(f))).Where(f => f.Day is not null).ToList();
        var kept = BackupDays.Kept(files.Select(f => f.Day!.Value), today);
        foreach (var (file, _) in files.Where(f => !kept.Contains(f.Day!.Value)))
        {
            File.Delete(file);
        }
    }

    private static DateOnly? DayOf(string file) =>
        DateOnly.TryParseExact(Path.GetFileNameWithoutExtension(file)[Prefix.Length..], DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
