namespace Tickover.Records.Tests;

/// <summary>The suite on SQLite.</summary>
public sealed class SqliteRecordTests(SqliteHome home) : RecordSuite(home), IClassFixture<SqliteHome>;
