namespace Tickover.Records.Tests.Cars;

/// <summary>The shelf on PostgreSQL.</summary>
public sealed class PostgresCarShelfTests(PostgresHome home) : CarShelfSuite(home);
