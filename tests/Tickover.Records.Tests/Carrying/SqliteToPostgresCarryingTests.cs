namespace Tickover.Records.Tests.Carrying;

/// <summary>From Sqlite to Postgres.</summary>
public sealed class SqliteToPostgresCarryingTests(PostgresHome home) : CarryingSuite(new SqliteHome(), home);
