using Microsoft.Data.Sqlite;

namespace Tickover.Records.Opening;

/// <summary>Copies a database by SQLite's own means, also while it is written to.</summary>
internal static class FileCopy
{
    /// <summary>Copies.</summary>
    /// <param name="from">The database.</param>
    /// <param name="to">The copy; what lay there is replaced.</param>
    /// <param name="cancellation">Stops before the copying; the copying itself is one call.</param>
    public static async Task CopyAsync(string from, string to, CancellationToken cancellation)
    {
        var beside = to + ".part";
        File.Delete(beside);
        await using (var source = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = from, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 10 }.ConnectionString))
        await using (var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = beside, Mode = SqliteOpenMode.ReadWriteCreate, Pooling = false }.ConnectionString))
        {
            await source.OpenAsync(cancellation);
            await target.OpenAsync(cancellation);
            source.BackupDatabase(target);

            // A copy is one file: without this it would carry the journal mode of the original and need its side files.
            await using var command = target.CreateCommand();
            command.CommandText = "PRAGMA journal_mode=DELETE";
            await command.ExecuteNonQueryAsync(cancellation);
        }

        File.Move(beside, to, overwrite: true);
    }
}
