namespace Tickover.Records.Tests;

/// <summary>The suite on SQLite.</summary>
public sealed class SqliteWorksheetTests(SqliteHome home) : WorksheetSuite(home), IClassFixture<SqliteHome>;
