using System.Globalization;
using Microsoft.Data.Sqlite;
using Tickover.Records.Model;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Safekeeping;

/// <summary>Puts a backup in the place of a record. What stood there is kept aside.</summary>
public static class RecordRestore
{
    private static readonly string[] SideFiles = ["-wal", "-shm"];

    /// <summary>Looks the backup through, copies it, keeps the present record aside and puts the copy in its place.</summary>
    /// <param name="place">Whose record is replaced; an empty folder is good too.</param>
    /// <param name="backup">The backup; it is not changed.</param>
    /// <param name="clock">Names the record kept aside.</param>
    /// <param name="cancellation">Stops the work up to the exchange itself.</param>
    /// <returns>What was put back and where the old one lies.</returns>
    /// <exception cref="RecordTroubleException">The backup is not good, or a running program has the record open; nothing was changed then.</exception>
    public static async Task<RestoreReport> PutBackAsync(RecordPlace place, string backup, TimeProvider clock, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(backup);
        ArgumentNullException.ThrowIfNull(clock);
        if (!place.IsFile)
        {
            throw new RecordTroubleException(RecordBackup.ByItsOwnMeans);
        }

        if (string.Equals(Path.GetFullPath(backup), Path.GetFullPath(place.File), StringComparison.Ordinal))
        {
            throw new RecordTroubleException($"{backup} is the record itself. Name a backup of it.");
        }

        var good = await BackupCheck.OfAsync(backup, place.Patience, cancellation);
        try
        {
            Directory.CreateDirectory(place.DataFolder);
            await using var folder = FolderLock.Take(place);
            using var alone = RecordHold.Alone(place);
            var wasAnother = NoteOf(place) is { } note && note != good.Record;
            var aside = await ExchangeAsync(place, backup, good, clock, cancellation);
            return new RestoreReport(good, aside, wasAnother);
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, place.Words);
        }
    }

    // A note that cannot be read is one more thing that a restored record puts right.
    private static Guid? NoteOf(RecordPlace place)
    {
        try
        {
            return RecordNote.Read(place)?.Record;
        }
        catch (RecordTroubleException)
        {
            return null;
        }
    }

    private static async Task<string?> ExchangeAsync(RecordPlace place, string backup, BackupReport good, TimeProvider clock, CancellationToken cancellation)
    {
        var fresh = place.File + ".restored";
        try
        {
            await FileCopy.CopyAsync(backup, fresh, place.Patience, cancellation);
            var copied = await BackupCheck.OfAsync(fresh, place.Patience, cancellation);
            if (!copied.Print.Matches(good.Print))
            {
                throw new RecordTroubleException($"The copy of {backup} is not equal to it. Nothing was changed; check the disk of {place.DataFolder}.");
            }

            var aside = await KeepAsideAsync(place, clock, cancellation);
            File.Move(fresh, place.File, overwrite: true);
            RecordNote.Replace(place, await StampAsync(place, cancellation));
            return aside;
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    // The record stays in its place until the new one is moved over it: a power cut in between leaves the old one standing.
    private static async Task<string?> KeepAsideAsync(RecordPlace place, TimeProvider clock, CancellationToken cancellation)
    {
        if (!File.Exists(place.File))
        {
            return null;
        }

        var aside = FreeName(Path.Combine(place.DataFolder, RecordNote.Folder), clock.GetLocalNow());
        var whole = await FoldInAsync(place, cancellation);
        File.Copy(place.File, aside);

        // What could not be folded in belongs to the old file alone: beside the new one it would be taken for its own.
        foreach (var side in SideFiles.Where(s => File.Exists(place.File + s)))
        {
            if (whole)
            {
                File.Delete(place.File + side);
            }
            else
            {
                File.Move(place.File + side, aside + side, overwrite: true);
            }
        }

        return aside;
    }

    // Brings what stands in the side files into the file itself; a damaged record cannot do that any more.
    private static async Task<bool> FoldInAsync(RecordPlace place, CancellationToken cancellation)
    {
        try
        {
            await using var connection = await SqliteFile.OpenAsync(place.File, SqliteOpenMode.ReadWrite, place.Patience, cancellation);
            return string.Equals(await SqliteFile.OneAsync<string>(connection, "PRAGMA journal_mode=DELETE", cancellation), "delete", StringComparison.Ordinal);
        }
        catch (SqliteException)
        {
            return false;
        }
    }

    private static string FreeName(string folder, DateTimeOffset now)
    {
        var stem = Path.Combine(folder, $"replaced-{now.ToString("yyyy-MM-dd-HHmmss", CultureInfo.InvariantCulture)}");
        var path = stem + ".db";
        for (var n = 2; File.Exists(path); n++)
        {
            path = string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}.db");
        }

        return path;
    }

    private static async Task<StampRow> StampAsync(RecordPlace place, CancellationToken cancellation)
    {
        var contexts = ContextFactory.For(place);
        try
        {
            return await RecordOpening.StampAsync(place, contexts, cancellation);
        }
        finally
        {
            contexts.Close();
        }
    }
}
