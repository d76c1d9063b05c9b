[assembly: AssemblyFixture(typeof(Tickover.Records.Tests.Scratch))]

namespace Tickover.Records.Tests;

/// <summary>Folders for the tests, all in one that is taken off the disk when the last test has ended.</summary>
public sealed class Scratch : IDisposable
{
    private static readonly Lazy<string> Root = new(() => Directory.CreateTempSubdirectory("tickover-records-").FullName);
    private static int _count;

    /// <summary>An empty folder nobody else has.</summary>
    public static string NewFolder() => Directory.CreateDirectory(Path.Combine(Root.Value, $"{Interlocked.Increment(ref _count)}")).FullName;

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Root.IsValueCreated)
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            Directory.Delete(Root.Value, recursive: true);
        }
    }
}
