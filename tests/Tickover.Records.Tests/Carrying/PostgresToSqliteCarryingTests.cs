namespace Tickover.Records.Tests.Carrying;

/// <summary>From Postgres to Sqlite.</summary>
public sealed class PostgresToSqliteCarryingTests(PostgresHome home) : CarryingSuite(home, new SqliteHome());
