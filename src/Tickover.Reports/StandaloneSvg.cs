using System.Text.RegularExpressions;
using Tickover.Reports.Paper;

namespace Tickover.Reports;

/// <summary>Makes a picture of a page into one for a file of its own: no style sheet is there to give its colours.</summary>
public static partial class StandaloneSvg
{
    /// <summary>Puts in the colours of paper.</summary>
    /// <param name="svg">A picture as the pages take it.</param>
    /// <returns>An svg document with a final newline.</returns>
    public static string Of(string svg)
    {
        ArgumentNullException.ThrowIfNull(svg);
        var start = svg.IndexOf('>', StringComparison.Ordinal) + 1;
        return ThemeVariable().Replace($"{svg[..start]}<rect width=\"100%\" height=\"100%\" fill=\"var(--surface)\"/>{svg[start..]}\n", m => m.Groups["role"].Value switch
        {
            "font" => "sans-serif",
            "stroke" => "2",
            var role => PaperColours.ByRole[role],
        });
    }

    [GeneratedRegex(@"var\(--(?<role>[a-z0-9-]+)\)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex ThemeVariable();
}
