using System.Text.RegularExpressions;

namespace Tickover.Architecture.Tests;

/// <summary>What holds for every file of the clone.</summary>
public sealed partial class FileTests
{
    private const int LongestSource = 350;
    private const int LongestTest = 500;

    /// <summary>Longer files, each with its reason.</summary>
    private static readonly Dictionary<string, string> MayBeLonger = [];

    // Put together from parts, so that this file does not hold what it looks for.
    private static readonly string[] MachinePaths =
    [
        "/" + "work/", "/" + "root/", "/" + "tmp/", "/" + @"home/[a-z]", "/" + "Users/[A-Za-z]", "C:" + @"\\Users",
    ];

    [Fact]
    public void Files_are_short_enough_to_find_ones_way_in()
    {
        // Migrations are written by a tool and read by nobody.
        var code = Repository.Under("src", ".cs", ".razor", ".js", ".css").Where(f => !f.Contains("/Migrations/", StringComparison.Ordinal)).Select(f => (File: f, Cap: LongestSource))
            .Concat(Repository.Under("tests", ".cs").Select(f => (File: f, Cap: LongestTest)))
            .Concat(Repository.Under("bench", ".cs", ".c").Select(f => (File: f, Cap: LongestSource)));

        var tooLong = code.Where(f => !MayBeLonger.ContainsKey(f.File))
            .Select(f => (f.File, f.Cap, Lines: Repository.Lines(f.File).Length))
            .Where(f => f.Lines > f.Cap)
            .Select(f => $"{f.File}: {f.Lines} lines, at most {f.Cap}");

        Assert.Empty(tooLong);
    }

    [Fact]
    public void Exceptions_to_the_length_are_still_needed()
    {
        Assert.All(MayBeLonger.Keys, f => Assert.True(Repository.Has(f) && Repository.Lines(f).Length > LongestSource, f));
    }

    [Fact]
    public void What_is_left_to_do_has_the_number_of_its_issue()
    {
        var word = "TO" + "DO";
        var unnumbered = new Regex($@"\b({word}|FIX{"ME"}|XX{"X"})\b(?!\s*\(?#\d+)", RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.Empty(Hits(unnumbered, Repository.TextFiles.Where(f => !f.EndsWith("package-lock.json", StringComparison.Ordinal))));
    }

    [Fact]
    public void No_file_names_a_place_on_one_machine()
    {
        var place = new Regex(string.Join('|', MachinePaths), RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.Empty(Hits(place, Repository.TextFiles));
    }

    [Fact]
    public void Package_locks_name_no_registry_but_the_public_one()
    {
        var elsewhere = new Regex("\"resolved\": \"https?://(?!registry\\.npmjs\\.org/)", RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.Empty(Hits(elsewhere, Repository.TextFiles.Where(f => f.EndsWith("package-lock.json", StringComparison.Ordinal))));
    }

    [Fact]
    public void Scripts_can_be_run()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no run bit.");

        string[] scripts = ["run.sh", "test.sh", "tickover", ".ci/run"];

        Assert.All(scripts, s => Assert.True(IsExecutable(s), s));
    }

    private static bool IsExecutable(string file) =>
        !OperatingSystem.IsWindows() && File.GetUnixFileMode(Path.Combine(Repository.Root, file)).HasFlag(UnixFileMode.UserExecute);

    private static IEnumerable<string> Hits(Regex wanted, IEnumerable<string> files) =>
        from file in files
        from line in Repository.Lines(file).Select((text, i) => (Text: text, Number: i + 1))
        where wanted.IsMatch(line.Text)
        select $"{file}:{line.Number}: {line.Text.Trim()}";
}
