using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Reports.Tests.HandOver;

namespace Tickover.Browser.Tests;

/// <summary>The account and the card as HTML files, opened from a disk: axe finds nothing, nothing is asked of anyone, nothing hangs over the side.</summary>
[Collection(typeof(OneBrowser))]
public sealed class PaperTests(Workshop workshop)
{
    [Theory]
    [InlineData("account", 1280)]
    [InlineData("account", 390)]
    [InlineData("card", 1280)]
    [InlineData("card", 390)]
    [InlineData("empty", 390)]
    public async Task File_is_good_to_read(string which, int width)
    {
        var file = Path.Combine(Path.GetTempPath(), $"tickover-{which}-{width}-{Environment.ProcessId}.html");
        await File.WriteAllTextAsync(file, PaperHtml.Write(Document(which)));
        await using var context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = width, Height = 900 } });
        var page = await context.NewPageAsync();
        List<string> asked = [];
        page.Request += (_, request) => asked.Add(request.Url);

        await page.GotoAsync(new Uri(file).AbsoluteUri);

        var options = new AxeRunOptions { Rules = new Dictionary<string, RuleOptions>(StringComparer.Ordinal) { ["color-contrast-enhanced"] = new() { Enabled = true } } };
        var result = await page.RunAxe(options);
        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html[..Math.Min(100, n.Html.Length)]).Take(3))}"));
        Assert.All(asked, a => Assert.True(a.StartsWith("file:", StringComparison.Ordinal) || a.StartsWith("data:", StringComparison.Ordinal), a));
        Assert.InRange(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 1, width);
        File.Delete(file);
    }

    private static PaperDocument Document(string which) => which switch
    {
        "card" => SetUpCardDocument.Of(Visits.Demonstration(), Visits.Settings),
        "empty" => HandOverDocument.Of(Visits.Empty(), Visits.Settings),
        _ => HandOverDocument.Of(Visits.Demonstration(), Visits.Settings),
    };
}
