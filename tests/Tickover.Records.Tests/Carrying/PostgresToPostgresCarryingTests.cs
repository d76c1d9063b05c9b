namespace Tickover.Records.Tests.Carrying;

/// <summary>From Postgres to Postgres.</summary>
public sealed class PostgresToPostgresCarryingTests(PostgresHome home) : CarryingSuite(home, home);
