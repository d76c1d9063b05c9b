using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;

namespace Tickover.Records.Opening;

/// <summary>Makes contexts, each for one operation.</summary>
internal sealed class ContextFactory
{
    private readonly Func<RecordsContext> _make;

    private ContextFactory(Func<RecordsContext> make) => _make = make;

    /// <summary>For a place.</summary>
    /// <param name="place">The file or the database.</param>
    /// <returns>The factory; nothing is opened yet, and no file is made.</returns>
    public static ContextFactory For(RecordPlace place)
    {
        if (place.ConnectionString is { } connection)
        {
            var postgres = new DbContextOptionsBuilder<PostgresRecords>().UseNpgsql(connection).Options;
            return new ContextFactory(() => new PostgresRecords(postgres));
        }

        // ReadWrite and not ReadWriteCreate: a file that is not there is a trouble, never a reason to begin an empty one.
        var file = new SqliteConnectionStringBuilder { DataSource = place.File, Mode = SqliteOpenMode.ReadWrite, ForeignKeys = true, DefaultTimeout = 10 };
        var sqlite = new DbContextOptionsBuilder<SqliteRecords>().UseSqlite(file.ConnectionString).AddInterceptors(new EveryConnection()).Options;
        return new ContextFactory(() => new SqliteRecords(sqlite));
    }

    /// <summary>A context for one operation.</summary>
    public RecordsContext Make() => _make();
}
