using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>What holds on every page.</summary>
internal static class PageChecks
{
    /// <summary>Nothing runs over, no target or letter is too small, no word is cut off, and axe knows of no barrier.</summary>
    public static async Task IsGoodAsync(IPage page)
    {
        await FitsAsync(page);
        Assert.Empty(await ViolationsAsync(page));
    }

    /// <summary>Nothing runs over, no target or letter is too small, no word is cut off.</summary>
    public static async Task FitsAsync(IPage page)
    {
        Assert.Equal(0, await PageMeasures.OverflowAsync(page));
        Assert.Equal([], await PageMeasures.SmallTargetsAsync(page));
        Assert.Equal([], await PageMeasures.SmallTextsAsync(page));
        Assert.Equal([], await PageMeasures.CutOffTextsAsync(page));
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(IPage page)
    {
        // Contrast of 7:1 is asked for beside what axe takes as its usual rules.
        var options = new AxeRunOptions { Rules = new Dictionary<string, RuleOptions>(StringComparer.Ordinal) { ["color-contrast-enhanced"] = new() { Enabled = true } } };
        var result = await page.RunAxe(options);
        return result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html[..Math.Min(100, n.Html.Length)]).Take(3))}");
    }
}
