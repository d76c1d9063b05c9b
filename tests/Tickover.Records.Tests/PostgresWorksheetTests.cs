namespace Tickover.Records.Tests;

/// <summary>The suite on PostgreSQL.</summary>
public sealed class PostgresWorksheetTests(PostgresHome home) : WorksheetSuite(home);
