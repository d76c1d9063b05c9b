using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Safekeeping;

/// <summary>Makes backups: one file that holds everything, PINs and pictures too, looked through before it counts.</summary>
public static class RecordBackup
{
    /// <summary>What to say where the record lies in PostgreSQL.</summary>
    internal const string ByItsOwnMeans =
        "This record lies in PostgreSQL, which is backed up and restored by its own means: pg_dump and pg_restore. tickover export writes everything but PINs to a file in either case.";

    /// <summary>Makes a backup, also while others write. It is opened, checked whole and compared with the record before it gets its name.</summary>
    /// <param name="store">The open record.</param>
    /// <param name="path">The file; it must not be there yet.</param>
    /// <param name="cancellation">Stops the work; then no file is left.</param>
    /// <returns>What is in the backup.</returns>
    /// <exception cref="RecordTroubleException">It could not be made, or is not equal to the record; then no file is left.</exception>
    public static async Task<BackupReport> MakeAsync(RecordStore store, string path, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(path);
        if (!store.Place.IsFile)
        {
            throw new RecordTroubleException(ByItsOwnMeans);
        }

        if (File.Exists(path) || Directory.Exists(path))
        {
            throw new RecordTroubleException($"{path} is there already and is left as it is. Name another file.");
        }

        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))))
        {
            throw new RecordTroubleException($"The folder of {path} is not there. Make it first.");
        }

        var fresh = path + ".unchecked";
        try
        {
            await FileCopy.CopyAsync(store.Place.File, fresh, store.Place.Patience, cancellation);
            var report = await BackupCheck.OfAsync(fresh, store.Place.Patience, cancellation);
            await CompareAsync(store, report, path, cancellation);
            File.Move(fresh, path);
            return report with { File = path };
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, path);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    // The record goes on while it is copied, so it is looked at as it was after the last act that the copy holds.
    private static async Task CompareAsync(RecordStore store, BackupReport report, string path, CancellationToken cancellation)
    {
        var print = await store.ReadAsync(context => RecordPrint.OfAsync(context, report.Print.LastAct, cancellation));
        if (!print.Matches(report.Print))
        {
            throw new RecordTroubleException($"{path} is not equal to the record it was made from, so it was not kept. Check the disk and try again.");
        }
    }
}
