using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;

namespace Tickover.Records.Tests;

/// <summary>The migrations hold what the model says.</summary>
public sealed class MigrationTests
{
    [Fact]
    public void Nothing_is_pending_on_SQLite()
    {
        using var context = new SqliteRecords(new DbContextOptionsBuilder<SqliteRecords>().UseSqlite("Data Source=:memory:").Options);

        Assert.False(context.Database.HasPendingModelChanges());
        Assert.NotEmpty(context.Database.GetMigrations());
    }

    [Fact]
    public void Nothing_is_pending_on_PostgreSQL()
    {
        using var context = new PostgresRecords(new DbContextOptionsBuilder<PostgresRecords>().UseNpgsql("Host=localhost").Options);

        Assert.False(context.Database.HasPendingModelChanges());
        Assert.NotEmpty(context.Database.GetMigrations());
    }
}
