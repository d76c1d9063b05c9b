using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

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
            MustBeReadable(connection);
            var postgres = new DbContextOptionsBuilder<PostgresRecords>().UseNpgsql(connection).Options;
            return new ContextFactory(() => new PostgresRecords(postgres));
        }

        // ReadWrite and not ReadWriteCreate: a file that is not there is a trouble, never a reason to begin an empty one.
        var file = new SqliteConnectionStringBuilder { DataSource = place.File, Mode = SqliteOpenMode.ReadWrite, ForeignKeys = true, DefaultTimeout = SqliteFile.Seconds(place.Patience) };
        var sqlite = new DbContextOptionsBuilder<SqliteRecords>().UseSqlite(file.ConnectionString).AddInterceptors(new EveryConnection(place.Patience)).Options;
        return new ContextFactory(() => new SqliteRecords(sqlite));
    }

    // What is wrong with it is not repeated: a password may be the very word that is wrong.
    private static void MustBeReadable(string connection)
    {
        try
        {
            if (string.IsNullOrEmpty(new NpgsqlConnectionStringBuilder(connection).Host))
            {
                throw new RecordTroubleException("The connection string names no host. It reads like Host=localhost;Database=workshop;Username=tickover;Password=…");
            }
        }
        catch (Exception fault) when (fault is ArgumentException or FormatException)
        {
            throw new RecordTroubleException("The connection string of the database cannot be read. It reads like Host=localhost;Database=workshop;Username=tickover;Password=…", fault);
        }
    }

    /// <summary>Closes the connections kept for later operations.</summary>
    public void Close()
    {
        using var context = _make();
        switch (context.Database.GetDbConnection())
        {
            case SqliteConnection file:
                SqliteConnection.ClearPool(file);
                break;
            case NpgsqlConnection server:
                NpgsqlConnection.ClearPool(server);
                break;
        }
    }

    /// <summary>A context for one operation.</summary>
    public RecordsContext Make() => _make();
}
