namespace Tickover.Records.Tests.Carrying;

/// <summary>From Sqlite to Sqlite.</summary>
public sealed class SqliteToSqliteCarryingTests() : CarryingSuite(new SqliteHome(), new SqliteHome());
