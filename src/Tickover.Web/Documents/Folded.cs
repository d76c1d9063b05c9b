using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Tickover.Web.Documents;

/// <summary>Folds a long page, so that a phone shows its chapters before their tables.</summary>
internal static partial class Folded
{
    private const int OneSecond = 1000;

    /// <summary>The page with every chapter closed and openable; what stands before the first stays open.</summary>
    /// <param name="html">A page whose chapters begin with h2.</param>
    /// <param name="what">What a row of a chapter's table is, such as "checks".</param>
    /// <returns>The page; each chapter says how many rows its table has.</returns>
    public static string Chapters(string html, string what)
    {
        var heads = Chapter().Matches(html);
        var folded = new StringBuilder(html[..(heads.Count > 0 ? heads[0].Index : html.Length)]);
        for (var k = 0; k < heads.Count; k++)
        {
            var end = k + 1 < heads.Count ? heads[k + 1].Index : html.Length;
            var body = html[(heads[k].Index + heads[k].Length)..end];
            var rows = Row().Count(body) - 1;
            var count = rows > 0 ? $" <span class=\"muted\">{rows} {what}</span>" : "";
            folded.Append(CultureInfo.InvariantCulture, $"<details class=\"chapter\"><summary><h2{heads[k].Groups["attributes"].Value}>{heads[k].Groups["title"].Value}{count}</h2></summary>{body}</details>");
        }

        return folded.ToString();
    }

    [GeneratedRegex("<h2(?<attributes>[^>]*)>(?<title>.*?)</h2>", RegexOptions.ExplicitCapture | RegexOptions.Singleline, OneSecond)]
    private static partial Regex Chapter();

    [GeneratedRegex("<tr>", RegexOptions.None, OneSecond)]
    private static partial Regex Row();
}
