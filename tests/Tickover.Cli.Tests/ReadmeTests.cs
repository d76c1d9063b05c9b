using System.Text;
using System.Text.RegularExpressions;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>The README shows what the commands print.</summary>
public sealed partial class ReadmeTests
{
    private const string Prompt = "$ tickover ";
    private const string LeftOut = "…";
    private const int OneSecond = 1000;

    [Fact]
    public async Task Readme_shows_what_the_commands_print()
    {
        var readme = Repository.Read("README.md");
        var fresh = new StringBuilder();
        var at = 0;

        foreach (Match fence in ConsoleFence().Matches(readme))
        {
            fresh.Append(readme, at, fence.Index - at).Append(await FreshAsync(fence));
            at = fence.Index + fence.Length;
        }

        fresh.Append(readme, at, readme.Length - at);
        Assert.NotEqual(0, at);
        await Shown.MatchesAsync("README.md", fresh.ToString());
    }

    private static async Task<string> FreshAsync(Match fence)
    {
        var shown = fence.Groups["body"].Value.TrimEnd('\n').Split('\n');
        var line = shown[0];
        Assert.StartsWith(Prompt, line, StringComparison.Ordinal);

        var ran = await Ran.LineAsync(line[2..]);
        var printed = ran.Output.TrimEnd().Split('\n');
        var gap = Array.IndexOf(shown, LeftOut);
        string[] kept = gap < 0 ? printed : [.. printed.Take(gap - 1), LeftOut, .. printed.TakeLast(shown.Length - gap - 1)];
        return $"```console\n{line}\n{string.Join('\n', kept)}\n```";
    }

    [GeneratedRegex(@"^```console\n(?<body>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline, OneSecond)]
    private static partial Regex ConsoleFence();
}
