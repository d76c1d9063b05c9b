namespace Tickover.Records.Tests;

/// <summary>The suite on PostgreSQL.</summary>
public sealed class PostgresRecordTests(PostgresHome home) : RecordSuite(home);
