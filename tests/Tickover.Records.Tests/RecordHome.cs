namespace Tickover.Records.Tests;

/// <summary>A kind of database that can give each test a record of its own.</summary>
public abstract class RecordHome
{
    /// <summary>A new place with no record in it.</summary>
    public abstract RecordPlace NewPlace();

    /// <summary>An empty folder that is deleted with the test run's temporary files.</summary>
    protected static string NewFolder() => Scratch.NewFolder();
}
