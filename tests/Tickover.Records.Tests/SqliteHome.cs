namespace Tickover.Records.Tests;

/// <summary>Records in files.</summary>
public sealed class SqliteHome : RecordHome
{
    public override RecordPlace NewPlace() => new(NewFolder());
}
