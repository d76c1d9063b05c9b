using Microsoft.Data.Sqlite;

namespace Tickover.Records.Opening;

/// <summary>Copies a database by SQLite's own means, also while it is written to.</summary>
internal static class FileCopy
{
    /// <summary>Copies.</summary>
    /// <param name="from">The database.</param>
    /// <param name="to">The copy; what lay there is replaced.</param>
    /// <param name="patience">How long a held file is waited for.</param>
    /// <param name="cancellation">Stops before the copying; the copying itself is one call.</param>
    public static async Task CopyAsync(string from, string to, TimeSpan patience, CancellationToken cancellation)
    {
        var beside = to + ".part";
        File.Delete(beside);
        try
        {
            await using (var source = await SqliteFile.OpenAsync(from, SqliteOpenMode.ReadOnly, patience, cancellation))
            await using (var target = await SqliteFile.OpenAsync(beside, SqliteOpenMode.ReadWriteCreate, patience, cancellation))
            {
                source.BackupDatabase(target);

                // A copy is one file: without this it would carry the journal mode of the original and need its side files.
                await SqliteFile.OneAsync<string>(target, "PRAGMA journal_mode=DELETE", cancellation);
            }

            File.Move(beside, to, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
            File.Delete(beside + "-journal");
        }
    }
}
