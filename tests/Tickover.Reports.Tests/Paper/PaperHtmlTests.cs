using System.Text.RegularExpressions;
using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Reports.Tests.HandOver;

namespace Tickover.Reports.Tests.Paper;

/// <summary>The same documents as one HTML file.</summary>
public sealed partial class PaperHtmlTests
{
    [Fact]
    public void File_needs_nothing_from_elsewhere_and_runs_nothing()
    {
        foreach (var html in Pages())
        {
            Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(" style=", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("@import", html, StringComparison.Ordinal);
            Assert.All(Sources().Matches(html), m => Assert.StartsWith("data:image/jpeg;base64,", m.Groups["address"].Value, StringComparison.Ordinal));
            Assert.DoesNotMatch(@"url\((?!#)", html);
        }
    }

    [Fact]
    public void Headings_go_down_one_step_at_a_time_and_pictures_have_words()
    {
        foreach (var html in Pages())
        {
            var levels = Headings().Matches(html).Select(m => int.Parse(m.Groups["level"].Value, System.Globalization.CultureInfo.InvariantCulture)).ToList();
            Assert.Equal(1, levels[0]);
            Assert.Single(levels, l => l == 1);
            Assert.All(levels.Skip(1).Zip(levels), pair => Assert.True(pair.First - pair.Second <= 1, "a heading is left out"));
            Assert.All(Regex.Matches(html, "<img [^>]*>", RegexOptions.None, TimeSpan.FromSeconds(5)), m => Assert.Matches("alt=\"[^\"]+\"", m.Value));
            Assert.All(Regex.Matches(html, "<svg [^>]*>", RegexOptions.None, TimeSpan.FromSeconds(5)), m => Assert.Matches("aria-hidden=\"true\"|aria-label=\"[^\"]+\"", m.Value));
            Assert.StartsWith("<!doctype html>\n<html lang=\"en-GB\">", html, StringComparison.Ordinal);
            Assert.Contains("<title>", html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_people_type_stays_words()
    {
        var html = PaperHtml.Write(PaperShop.Document(
            new Masthead("<img src=x onerror=alert(1)>", "\"><svg onload=x>", ["& Sons"]), new Table("</caption><b>", [new Column("<i>")], [[Prose.Of("</td></table>")]]),
            new Photos([new Photo(PaperShop.Jpeg, Prose.Of("\" onload=\"x"), [])]), new QrLink("https://saltmarsh.example/?a=\"><b>", "x")));

        Assert.DoesNotContain("<img src=x", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg onload", html, StringComparison.Ordinal);
        Assert.DoesNotContain("\" onload=\"x", html, StringComparison.Ordinal);
        Assert.DoesNotContain("</caption><b>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;/td&gt;&lt;/table&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_writers_tell_the_same()
    {
        var document = HandOverDocument.Of(Visits.Demonstration(), Visits.Settings);
        var pdf = Letters(PaperShop.Text(PaperShop.Write(document)));
        var headings = Regex.Matches(PaperHtml.Write(document), "<h[123]>(?<words>[^<]*)</h", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5)).Select(m => System.Net.WebUtility.HtmlDecode(m.Groups["words"].Value)).ToList();

        Assert.InRange(headings.Count, 40, 100);
        Assert.All(headings, h => Assert.Contains(Letters(h), pdf, StringComparison.Ordinal));
    }

    [Fact]
    public void Style_can_be_allowed_by_its_hash()
    {
        var html = PaperHtml.Write(PaperShop.Document(Paragraph.Of("x")));
        var style = html[(html.IndexOf("<style>", StringComparison.Ordinal) + 7)..html.IndexOf("</style>", StringComparison.Ordinal)];
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(style)));

        Assert.Equal($"'sha256-{hash}'", PaperHtml.StyleSource);
    }

    private static string Letters(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static IEnumerable<string> Pages() =>
    [
        PaperHtml.Write(PaperShop.Document(PaperShop.Everything())), PaperHtml.Write(HandOverDocument.Of(Visits.Demonstration(), Visits.Settings)),
        PaperHtml.Write(HandOverDocument.Of(Visits.Empty(), Visits.Settings)), PaperHtml.Write(SetUpCardDocument.Of(Visits.Demonstration(), Visits.Settings)),
    ];

    [GeneratedRegex("(?:src|xlink:href)=\"(?<address>[^\"]*)\"", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Sources();

    [GeneratedRegex("<h(?<level>[1-6])>", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Headings();
}
