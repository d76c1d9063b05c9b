namespace Tickover.Records.Tests.Cars;

/// <summary>The shelf on SQLite.</summary>
public sealed class SqliteCarShelfTests() : CarShelfSuite(new SqliteHome());
