namespace Tickover.Workshop.Tests;

/// <summary>The files of the repository that tests read, and rewrite when asked to.</summary>
internal static class Repository
{
    /// <summary>Set to 1, tests write the generated files anew instead of comparing them.</summary>
    private const string UpdateVariable = "TICKOVER_UPDATE";

    public static string Root { get; } = Find();

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    public static string Sample(string name) => Read($"samples/{name}.car.json");

    /// <summary>Demands that a committed file is what is generated now.</summary>
    public static void AssertGenerated(string path, string generated)
    {
        var file = Path.Combine(Root, path);
        if (string.Equals(Environment.GetEnvironmentVariable(UpdateVariable), "1", StringComparison.Ordinal))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, generated);
        }

        Assert.True(File.Exists(file), $"{path} is missing; run the tests with {UpdateVariable}=1.");
        Assert.True(
            string.Equals(File.ReadAllText(file).ReplaceLineEndings("\n"), generated, StringComparison.Ordinal),
            $"{path} is not what the catalogue generates; run the tests with {UpdateVariable}=1 and look at the difference.");
    }

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tickover.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The repository's root was not found above the tests.");
    }
}
