using System.Globalization;
using Microsoft.Playwright;

namespace Tickover.Bench.Shopfloor;

/// <summary>How long a page takes in Chromium until something useful stands there.</summary>
internal static class FirstPaint
{
    private const string Browser = "/usr/bin/chromium";
    private const int Runs = 5;

    // The heading of what is next is the useful thing: it is text, so first contentful paint tells of it.
    private const string Ask = "() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? -1";

    public static async Task MeasureAsync(string address, string page)
    {
        if (!File.Exists(Browser))
        {
            Console.WriteLine("no chromium here; first paint not measured");
            return;
        }

        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Browser, Args = ["--no-sandbox", "--disable-gpu"] });
        var times = new List<double>();
        for (var k = 0; k < Runs; k++)
        {
            // A context of its own each time, so that nothing comes from a cache.
            await using var context = await browser.NewContextAsync(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 800 } });
            var window = await context.NewPageAsync();
            await window.GotoAsync(address + page);
            times.Add(await window.EvaluateAsync<double>(Ask));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first contentful paint of the visit page, nothing cached: {string.Join(", ", times.Select(t => t.ToString("0", CultureInfo.InvariantCulture)))} ms"));
    }
}
