namespace Tickover.Architecture.Tests;

/// <summary>The clone the tests stand in: its files, without what a build or a run leaves behind.</summary>
internal static class Repository
{
    private static readonly string[] NotOurs =
        [".git", "artifacts", "node_modules", "tickover-data", "bin", "obj", "build", "BenchmarkDotNet.Artifacts", "TestResults"];

    private static readonly string[] TextEndings =
        [".cs", ".razor", ".js", ".mjs", ".css", ".html", ".md", ".json", ".sh", ".c", ".h", ".props", ".targets", ".csproj", ".slnx", ".txt", ".snap", ".csv", ".svg", ".py", ".yml", ".yaml"];

    public static string Root { get; } = Find();

    /// <summary>All text files, as paths from the root with forward slashes.</summary>
    public static IReadOnlyList<string> TextFiles { get; } = [.. Walk(Root).Where(IsText).Select(Relative).Order(StringComparer.Ordinal)];

    public static IEnumerable<string> Under(string folder, params string[] endings) =>
        TextFiles.Where(f => f.StartsWith(folder + "/", StringComparison.Ordinal) && endings.Any(e => f.EndsWith(e, StringComparison.Ordinal)));

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    public static bool Has(string path) => File.Exists(Path.Combine(Root, path)) || Directory.Exists(Path.Combine(Root, path));

    private static string Relative(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/');

    private static bool IsText(string file) =>
        TextEndings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase) || Path.GetExtension(file).Length == 0 || Path.GetFileName(file)[0] == '.';

    private static IEnumerable<string> Walk(string folder)
    {
        var below = Directory.EnumerateDirectories(folder).Where(d => !NotOurs.Contains(Path.GetFileName(d), StringComparer.Ordinal));
        return Directory.EnumerateFiles(folder).Where(f => Path.GetFileName(f) is not ".git").Concat(below.SelectMany(Walk));
    }

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tickover.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests run outside the clone");
    }
}
