using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>Makes sure that an SQLite file is there, ours and whole.</summary>
internal static class FileOpening
{
    /// <summary>"Tick" in the file's own field for whose it is (SQLite file format, offset 68).</summary>
    private const int OurMark = 0x5469636B;

    private const string NewSuffix = ".new";

    private static readonly byte[] Header = "SQLite format 3\0"u8.ToArray();

    // Pictures can be thousands of megabytes; they are checked when a backup is made.
    private static readonly string[] CheckedTables = ["Acts", "Changes", "Visit", "Reading", "Finding", "CustomerCar", "SignOff"];

    /// <summary>Begins a record, or makes sure of the one that is there.</summary>
    /// <returns>Whether it was begun just now.</returns>
    public static async Task<bool> PrepareAsync(RecordPlace place, RecordNote? note, Beginning beginning, TimeProvider clock, CancellationToken cancellation)
    {
        if (File.Exists(place.File))
        {
            await CheckAsync(place.File, place.Patience, cancellation);
            await LetReadersInAsync(place, cancellation);
            return false;
        }

        if (note is not null)
        {
            throw new RecordTroubleException(
                $"{place.File} is not there, although this folder has a record begun on {note.BegunAt:yyyy-MM-dd} ({note.Where}). Put the file back or restore a backup with: tickover restore. For a new record choose another folder.");
        }

        if (beginning == Beginning.Expected)
        {
            throw new RecordTroubleException($"There is no record in {place.DataFolder}. Name the folder with --data, or begin one with: tickover serve --data {place.DataFolder}");
        }

        return await BeginAsync(place, clock, cancellation);
    }

    /// <summary>Makes sure that a file is a whole record of ours.</summary>
    /// <exception cref="RecordTroubleException">It is not.</exception>
    public static async Task CheckAsync(string path, TimeSpan patience, CancellationToken cancellation)
    {
        var start = new byte[Header.Length];
        await using (var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete))
        {
            if (await stream.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, cancellation) < start.Length || !start.AsSpan().SequenceEqual(Header))
            {
                throw new RecordTroubleException($"{path} is no database. It is left as it is; name another folder with --data, or restore a backup with: tickover restore");
            }
        }

        await using var connection = await SqliteFile.OpenAsync(path, SqliteOpenMode.ReadWrite, patience, cancellation);
        if (await SqliteFile.OneAsync<long>(connection, "PRAGMA application_id", cancellation) != OurMark)
        {
            throw new RecordTroubleException($"{path} is a database of another program. It is left as it is; name another folder with --data.");
        }

        foreach (var table in CheckedTables)
        {
            await CheckTableAsync(connection, table, path, cancellation);
        }
    }

    /// <summary>Puts a copy aside before the record is changed to a newer form.</summary>
    public static async Task KeepCopyAsync(RecordPlace place, string lastMigration, CancellationToken cancellation)
    {
        var folder = Directory.CreateDirectory(Path.Combine(place.DataFolder, RecordNote.Folder, "before-upgrade"));
        await FileCopy.CopyAsync(place.File, Path.Combine(folder.FullName, $"after-{lastMigration}.db"), place.Patience, cancellation);
    }

    /// <summary>Takes away the lock of an upgrade that was killed; the caller holds the folder, so nobody is upgrading.</summary>
    public static async Task ClearStaleLockAsync(RecordsContext context, CancellationToken cancellation)
    {
        var there = await context.Database.SqlQuery<int>($"SELECT COUNT(*) AS Value FROM sqlite_master WHERE name = '__EFMigrationsLock'").SingleAsync(cancellation);
        if (there > 0)
        {
            await context.Database.ExecuteSqlAsync($"DELETE FROM __EFMigrationsLock", cancellation);
        }
    }

    // Made beside its name and moved there when it is whole, so that a power cut leaves no half-made record.
    private static async Task<bool> BeginAsync(RecordPlace place, TimeProvider clock, CancellationToken cancellation)
    {
        await using var alone = FolderLock.Take(place);
        if (File.Exists(place.File))
        {
            // Another program was quicker; what it began is whole, since it let go of the folder.
            return false;
        }

        var beside = place.File + NewSuffix;
        foreach (var left in Directory.EnumerateFiles(place.DataFolder, Path.GetFileName(beside) + "*"))
        {
            File.Delete(left);
        }

        await using (var connection = await SqliteFile.OpenAsync(beside, SqliteOpenMode.ReadWriteCreate, place.Patience, cancellation))
        {
            await SqliteFile.OneAsync<long>(connection, $"PRAGMA application_id={OurMark}", cancellation);
            await SqliteFile.LetReadersInAsync(connection, cancellation);
            await using var context = new SqliteRecords(new DbContextOptionsBuilder<SqliteRecords>().UseSqlite(connection).Options);
            await context.Database.MigrateAsync(cancellation);
            context.Stamps.Add(new StampRow { Record = Guid.CreateVersion7(), BegunAt = DateTimeOffset.FromUnixTimeMilliseconds(clock.GetUtcNow().ToUnixTimeMilliseconds()) });
            await context.SaveChangesAsync(cancellation);
            await SqliteFile.OneAsync<long>(connection, "PRAGMA wal_checkpoint(TRUNCATE)", cancellation);
        }

        File.Move(beside, place.File);
        return true;
    }

    private static async Task CheckTableAsync(SqliteConnection connection, string table, string path, CancellationToken cancellation)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = $"PRAGMA quick_check('{table}')";
        string? answer;
        try
        {
            answer = (string?)await command.ExecuteScalarAsync(cancellation);
        }
        catch (SqliteException fault)
        {
            throw Trouble.Tell(fault, path);
        }

        if (!string.Equals(answer, "ok", StringComparison.Ordinal))
        {
            throw new RecordTroubleException($"{path} is damaged ({answer}). Keep the file aside and restore the last backup with: tickover restore");
        }
    }

    // A restored backup is one file without it.
    private static async Task LetReadersInAsync(RecordPlace place, CancellationToken cancellation)
    {
        await using var connection = await SqliteFile.OpenAsync(place.File, SqliteOpenMode.ReadWrite, place.Patience, cancellation);
        await SqliteFile.LetReadersInAsync(connection, cancellation);
    }
}
