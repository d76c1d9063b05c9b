using Microsoft.Data.Sqlite;

namespace Tickover.Records.Opening;

/// <summary>Opens SQLite files for the work around a record: checking, copying, replacing.</summary>
internal static class SqliteFile
{
    /// <summary>Opens a file by itself, outside of any pool, so that nothing holds it afterwards.</summary>
    public static async Task<SqliteConnection> OpenAsync(string path, SqliteOpenMode mode, TimeSpan patience, CancellationToken cancellation)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false, DefaultTimeout = Seconds(patience) }.ConnectionString);
        try
        {
            await connection.OpenAsync(cancellation);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    /// <summary>Runs a statement that answers with one value.</summary>
    public static async Task<T?> OneAsync<T>(SqliteConnection connection, string sql, CancellationToken cancellation)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync(cancellation) is T answer ? answer : default;
    }

    /// <summary>Writers and readers do not wait for each other, and a commit is one write at the end of a second file (SQLite, "Write-Ahead Logging").</summary>
    public static Task<string?> LetReadersInAsync(SqliteConnection connection, CancellationToken cancellation) => OneAsync<string>(connection, "PRAGMA journal_mode=WAL", cancellation);

    /// <summary>A time-out as the database's driver takes it: whole seconds, of which 0 would mean for ever.</summary>
    public static int Seconds(TimeSpan patience) => Math.Max(1, (int)Math.Ceiling(patience.TotalSeconds));
}
