using Tickover.Instruments.Logs;

namespace Tickover.Cli.Input;

/// <summary>Reads files in which the columns of a logger are remembered.</summary>
internal static class LayoutFile
{
    private const long Longest = 1_000_000;

    /// <summary>Reads them.</summary>
    /// <param name="paths">The files.</param>
    /// <returns>The layouts, or what is wrong with the first that cannot be used.</returns>
    public static Answer<IReadOnlyList<LogLayout>> Read(IEnumerable<string> paths)
    {
        var layouts = new List<LogLayout>();
        foreach (var path in paths)
        {
            if (!File.Exists(path))
            {
                return Answer<IReadOnlyList<LogLayout>>.No($"There is no file '{path}'. Check the name and the folder you are in.");
            }

            if (new FileInfo(path).Length > Longest || LogLayout.Read(File.ReadAllText(path)) is not { } layout)
            {
                return Answer<IReadOnlyList<LogLayout>>.No($"'{path}' holds no columns of a log. Write one with --set and --remember.");
            }

            layouts.Add(layout);
        }

        return layouts.ToArray();
    }
}
