using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>A log dropped on a car: what was taken for what, the trace, and a refusal, at a desk and on a phone.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class RoadLogTests(Workshop workshop)
{
    // Set to a folder to look at what was tested.
    private static readonly string? Shots = Environment.GetEnvironmentVariable("TICKOVER_SHOTS");

    [Theory]
    [InlineData("Larkfield Tern 2800", "tern-road.csv", "paper", 1280, 800)]
    [InlineData("Larkfield Tern 2800", "tern-road.csv", "evening", 390, 844)]
    [InlineData("Larkfield Osprey V8", "osprey-road.csv", "evening", 1280, 800)]
    [InlineData("Larkfield Osprey V8", "osprey-road.csv", "paper", 390, 844)]
    [InlineData("Larkfield Osprey V8", "osprey-road.csv", "daylight", 390, 844)]
    public async Task A_log_shows_its_columns_and_its_trace(string car, string log, string theme, int width, int height)
    {
        await using var window = await workshop.OpenAsync((width, height), theme);
        var page = await window.GoAsync($"{workshop.VisitOf(car)}/road-logs");
        await page.SetInputFilesAsync("#log", Path.Combine(Repository.Samples, log));
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the log" }).ClickAsync();
        await page.WaitForSelectorAsync(".cols");
        await GoodAsync(page, $"{log}-{theme}-{width}-columns");
        Assert.True(await page.Locator(".trace-picture:visible").CountAsync() == 1, "one trace is to be seen");

        await page.GotoAsync($"{workshop.VisitOf(car)}/road-logs");
        await GoodAsync(page, $"{log}-{theme}-{width}-road-logs");
    }

    [Theory]
    [InlineData("nothing.csv", "", 390)]
    [InlineData("named-otherwise.csv", "a,b,c,d\n", 1280)]
    public async Task A_log_that_cannot_be_used_says_what_would_do(string name, string headings, int width)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("tickover-log-").FullName, name);
        await File.WriteAllTextAsync(path, headings + (headings.Length == 0 ? "" : string.Concat(Enumerable.Range(0, 300).Select(i => $"{i / 10.0:0.0},{900 + i % 7},{i % 90},{(i % 5) + 10}\n"))));
        await using var window = await workshop.OpenAsync((width, 800));
        var page = await window.GoAsync($"{workshop.VisitOf("Samphire Gannet 1500")}/road-logs");
        await page.SetInputFilesAsync("#log", path);
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the log" }).ClickAsync();
        await page.WaitForSelectorAsync("[role=alert]");

        await GoodAsync(page, $"{name}-{width}");
    }

    private static async Task GoodAsync(IPage page, string name)
    {
        if (Shots is not null)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(Shots, $"{name}.png"), FullPage = true });
            if (await page.Locator(".trace-picture:visible").CountAsync() > 0)
            {
                await page.Locator(".trace-picture:visible").First.ScreenshotAsync(new() { Path = Path.Combine(Shots, $"{name}-trace.png") });
            }
        }

        await PageChecks.IsGoodAsync(page);
    }
}
