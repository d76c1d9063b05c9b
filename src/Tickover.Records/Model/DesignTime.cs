using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Tickover.Records.Model;

/// <summary>Lets the tool that writes migrations make a context; it never opens this database.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<SqliteRecords>, IDesignTimeDbContextFactory<PostgresRecords>
{
    /// <inheritdoc/>
    SqliteRecords IDesignTimeDbContextFactory<SqliteRecords>.CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteRecords>().UseSqlite("Data Source=:memory:").Options);

    /// <inheritdoc/>
    PostgresRecords IDesignTimeDbContextFactory<PostgresRecords>.CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresRecords>().UseNpgsql("Host=localhost").Options);
}
