using Microsoft.Data.Sqlite;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Opening;

/// <summary>Short ways to open records in tests.</summary>
internal static class Opened
{
    public static RecordPlace NewPlace() => new(Scratch.NewFolder());

    /// <summary>A closed record with a car and a visit in it.</summary>
    public static async Task<RecordPlace> WithSomethingAsync()
    {
        var home = new SqliteHome();
        using var open = await OpenRecord.BeginAsync(home);
        return open.Store.Place;
    }

    public static Task<RecordStore> OpenAsync(RecordPlace place, Beginning beginning = Beginning.Allowed, TimeProvider? clock = null) =>
        RecordOpening.OpenAsync(place, beginning, clock ?? TimeProvider.System, TestContext.Current.CancellationToken);

    /// <summary>Opening has to fail; what it says.</summary>
    public static async Task<string> RefusalAsync(RecordPlace place, Beginning beginning = Beginning.Allowed) =>
        (await Assert.ThrowsAsync<RecordTroubleException>(() => OpenAsync(place, beginning))).Message;

    /// <summary>Runs a statement on a file behind the record's back.</summary>
    public static void Run(string file, string sql, SqliteOpenMode mode = SqliteOpenMode.ReadWrite)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ConnectionString);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public static object? Ask(string file, string sql)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ConnectionString);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
