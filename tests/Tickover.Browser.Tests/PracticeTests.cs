using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A newcomer at the practice engine presses only what the page offers next, and a V8 with a hidden fault comes within limits.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class PracticeTests(Workshop workshop)
{
    private const int MostPresses = 200;

    [Theory]
    [InlineData(1280, 800, "One hidden fault", "7", 1)]
    [InlineData(390, 844, "Healthy, out of balance", "7", 0, Traits = ["Speed", "slow"])]
    public async Task Pressing_what_is_offered_brings_a_v8_within_limits(int width, int height, string hard, string seed, int faults)
    {
        await using var window = await workshop.OpenAsync((width, height));
        var page = await window.GoAsync("/practice");
        await page.GetByRole(AriaRole.Radio, new() { Name = "Larkfield Osprey V8" }).CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = hard }).CheckAsync();
        await page.GetByLabel("Number of the engine").FillAsync(seed);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start it up" }).ClickAsync();

        var presses = 0;
        var next = page.Locator("#next-move .btn.go");
        for (; presses < MostPresses && await next.CountAsync() == 1; presses++)
        {
            var press = (Said: await page.Locator("#next-move .what").TextContentAsync(), Address: page.Url);
            await next.ClickAsync();
            await page.WaitForURLAsync(u => !string.Equals(u, press.Address, StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.DOMContentLoaded });
        }

        await Expect(page.Locator("#next-move .what")).ToContainTextAsync("Balanced");
        Assert.Equal(0, await PageMeasures.OverflowAsync(page));
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand it over and see the score" }).ClickAsync();

        var score = page.Locator("section.score");
        await Expect(score).ToContainTextAsync("In balance.");
        await Expect(score).ToContainTextAsync(faults == 0 ? "Nothing was hidden in it." : "Found and mended.");
        TestContext.Current.SendDiagnosticMessage($"{width} px: {presses} presses");
    }
}
