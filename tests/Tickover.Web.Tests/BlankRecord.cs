using Tickover.Records;
using Tickover.Records.Opening;

namespace Tickover.Web.Tests;

/// <summary>Records for apps to start on, begun once and copied: beginning one takes longer than most of the tests.</summary>
internal static class BlankRecord
{
    // SQLite keeps what was written last beside the file for as long as a pooled connection is open.
    private const string WriteAhead = "-wal";

    private static readonly Lazy<Task<string>> Blank = new(async () =>
    {
        var place = new RecordPlace(Directory.CreateTempSubdirectory("tickover-blank-").FullName);
        using var store = await RecordOpening.OpenAsync(place, Beginning.Allowed, TimeProvider.System);
        return place.File;
    });

    private static readonly Lazy<Task<string>> Demonstration = new(async () =>
    {
        var app = await TestApp.StartAsync();
        using (var loaded = await app.PostFormAsync("/begin", "/begin/demonstration"))
        {
            Assert.Equal("/", loaded.Headers.Location!.ToString());
        }

        await app.StopAsync();
        return Path.Combine(app.Folder, RecordPlace.FileName);
    });

    /// <summary>Puts an empty record into a folder.</summary>
    public static Task CopyToAsync(string folder) => CopyAsync(Blank, folder);

    /// <summary>Puts a record with the demonstration in it into a folder.</summary>
    public static Task CopyDemonstrationToAsync(string folder) => CopyAsync(Demonstration, folder);

    /// <summary>Takes the originals off the disk.</summary>
    public static async Task RemoveAsync()
    {
        foreach (var one in new[] { Blank, Demonstration }.Where(o => o.IsValueCreated))
        {
            Directory.Delete(Path.GetDirectoryName(await one.Value)!, recursive: true);
        }
    }

    private static async Task CopyAsync(Lazy<Task<string>> from, string folder)
    {
        var file = await from.Value;
        File.Copy(file, Path.Combine(folder, RecordPlace.FileName));
        if (File.Exists(file + WriteAhead))
        {
            File.Copy(file + WriteAhead, Path.Combine(folder, RecordPlace.FileName + WriteAhead));
        }
    }
}
