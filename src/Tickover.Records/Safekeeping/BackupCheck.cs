using System.Security.Cryptography;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Safekeeping;

/// <summary>Opens a backup and looks through all of it, as somebody would who has to live from it.</summary>
internal static class BackupCheck
{
    /// <summary>Looks a backup through.</summary>
    /// <param name="path">The file; it is not changed.</param>
    /// <param name="patience">How long a held file is waited for.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>What is in it.</returns>
    /// <exception cref="RecordTroubleException">It is not a whole record that this program can read.</exception>
    public static async Task<BackupReport> OfAsync(string path, TimeSpan patience, CancellationToken cancellation)
    {
        if (!File.Exists(path))
        {
            throw new RecordTroubleException($"There is no file {path}. Name the backup.");
        }

        try
        {
            await FileOpening.CheckAsync(path, patience, cancellation);
            await using var connection = await SqliteFile.OpenAsync(path, SqliteOpenMode.ReadOnly, patience, cancellation);
            await MustBeAsync(connection, "PRAGMA integrity_check(1)", path, cancellation);
            if (await SqliteFile.OneAsync<string>(connection, "SELECT \"table\" FROM pragma_foreign_key_check LIMIT 1", cancellation) is { } orphan)
            {
                throw new RecordTroubleException($"{path} is damaged: an entry of {orphan} belongs to nothing. Use another backup.");
            }

            await using var context = new SqliteRecords(new DbContextOptionsBuilder<SqliteRecords>().UseSqlite(connection).Options);
            await RecordOpening.RefuseNewerAsync(context, path, cancellation);
            var stamp = await context.Stamps.AsNoTracking().SingleOrDefaultAsync(cancellation) ?? throw new RecordTroubleException($"{path} was begun but never finished. Use another backup.");
            var pictures = await PicturesAsync(context, path, cancellation);
            return new BackupReport(path, new FileInfo(path).Length, stamp.Record, await RecordPrint.OfAsync(context, null, cancellation), pictures);
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, path);
        }
    }

    private static async Task MustBeAsync(SqliteConnection connection, string check, string path, CancellationToken cancellation)
    {
        var answer = await SqliteFile.OneAsync<string>(connection, check, cancellation);
        if (!string.Equals(answer, "ok", StringComparison.Ordinal))
        {
            throw new RecordTroubleException($"{path} is damaged ({answer}). Use another backup.");
        }
    }

    // One by one: all of them at once may be more than the machine's memory.
    private static async Task<int> PicturesAsync(RecordsContext context, string path, CancellationToken cancellation)
    {
        var count = 0;
        await foreach (var picture in context.Pictures.AsNoTracking().Select(p => new { p.Photograph, p.Hash, p.Whole }).AsAsyncEnumerable().WithCancellation(cancellation))
        {
            count++;
            if (!string.Equals(Convert.ToHexStringLower(SHA256.HashData(picture.Whole)), picture.Hash, StringComparison.Ordinal))
            {
                throw new RecordTroubleException($"{path} is damaged: the picture {picture.Photograph:N} is not what was taken. Use another backup.");
            }
        }

        return count;
    }
}
