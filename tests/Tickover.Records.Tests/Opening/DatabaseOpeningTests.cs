using Npgsql;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Opening;

/// <summary>Which PostgreSQL databases are opened and which are refused.</summary>
public sealed class DatabaseOpeningTests(PostgresHome home)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_database_of_another_program_is_left_as_it_is()
    {
        var place = home.NewPlace();
        await RunAsync(place, "CREATE TABLE songs (title text)");

        Assert.Contains("another program", await Opened.RefusalAsync(place), StringComparison.Ordinal);
        Assert.Equal(1L, await RunAsync(place, "SELECT COUNT(*) FROM information_schema.tables WHERE table_schema = current_schema()"));
    }

    [Fact]
    public async Task Where_one_was_expected_no_empty_one_is_made()
    {
        var place = home.NewPlace();

        Assert.Contains("is empty", await Opened.RefusalAsync(place, Beginning.Expected), StringComparison.Ordinal);
        Assert.Equal(0L, await RunAsync(place, "SELECT COUNT(*) FROM information_schema.tables WHERE table_schema = current_schema()"));
    }

    [Fact]
    public async Task Where_the_folder_knows_a_record_an_empty_database_is_refused()
    {
        var place = home.NewPlace();
        (await Opened.OpenAsync(place)).Dispose();
        var emptied = place with { ConnectionString = home.NewPlace().ConnectionString };

        Assert.Contains("is empty", await Opened.RefusalAsync(emptied), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_of_a_newer_program_is_refused()
    {
        var place = home.NewPlace();
        (await Opened.OpenAsync(place)).Dispose();
        await RunAsync(place, "INSERT INTO \"__EFMigrationsHistory\" VALUES ('20990101000000_Later', '99')");

        Assert.Contains("newer Tickover", await Opened.RefusalAsync(place), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_is_gone_is_told_without_the_password()
    {
        var place = new RecordPlace(Opened.NewPlace().DataFolder, "Host=127.0.0.1;Port=1;Username=ruth;Password=secret-word;Database=record;Timeout=2");

        var words = await Opened.RefusalAsync(place);

        Assert.Contains("does not answer", words, StringComparison.Ordinal);
        Assert.DoesNotContain("secret-word", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_connection_string_that_is_none_is_told()
    {
        var words = await Opened.RefusalAsync(new RecordPlace(Opened.NewPlace().DataFolder, "somewhere=else"));

        Assert.Contains("connection string", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lost_connection_is_told_and_the_next_entry_goes_through()
    {
        var place = home.NewPlace();
        using var store = await Opened.OpenAsync(place);
        var name = new NpgsqlConnectionStringBuilder(place.ConnectionString).Database;
        var others = place with { ConnectionString = new NpgsqlConnectionStringBuilder(place.ConnectionString) { Database = "postgres" }.ConnectionString };
        await RunAsync(others, $"SELECT COUNT(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE datname = '{name}'");
        var act = new Act { Key = Guid.NewGuid(), Items = [new Owner { Name = "Somebody" }], Words = "kept" };

        var outcome = await KeepTwiceAsync(store, act);

        Assert.True(outcome.IsKept);
        Assert.Single(await store.AllAsync<Owner>(Cancellation));
    }

    // The first sending may meet the dead connection; the same key sent again is kept once.
    private static async Task<ActOutcome> KeepTwiceAsync(RecordStore store, Act act)
    {
        try
        {
            await store.KeepAsync(act, Cancellation);
        }
        catch (RecordTroubleException)
        {
            // As told to the tablet, which sends again.
        }

        return await store.KeepAsync(act, Cancellation);
    }

    private static async Task<object?> RunAsync(RecordPlace place, string sql)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(place.ConnectionString) { Pooling = false }.ConnectionString);
        await connection.OpenAsync(Cancellation);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync(Cancellation);
    }
}
