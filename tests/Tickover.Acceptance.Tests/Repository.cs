namespace Tickover.Acceptance.Tests;

/// <summary>Where the checked-out repository lies, found upwards from the running test.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tickover.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds Tickover.slnx.");
    }
}
