namespace Tickover.Records.Tests;

/// <summary>Where the repository's own files are.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Sample(string name) => File.ReadAllText(Path.Combine(Root, "samples", name + ".car.json"));

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Tickover.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("Tickover.slnx is not above the tests.");
    }
}
