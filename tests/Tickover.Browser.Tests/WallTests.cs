using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A wall's map tapped on a phone and in the sun.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class WallTests(Workshop workshop)
{
    [Theory]
    [InlineData(390, 844, "evening")]
    [InlineData(1280, 800, "daylight")]
    public async Task From_storage_to_the_working_of_a_cell_and_back(int width, int height, string theme)
    {
        await using var window = await workshop.OpenAsync((width, height), theme);
        var page = await window.GoAsync(workshop.Filled("{osprey}/storage"));
        await page.Locator("#stage").GetByRole(AriaRole.Link, new() { Name = "Wall of a tank" }).ClickAsync();
        await PageChecks.FitsAsync(page);
        if (await page.GetByRole(AriaRole.Link, new() { Name = "See it drawn, with the working" }).CountAsync() == 0)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Keep the sample Larkfield Tern 2800, left tank, underside" }).ClickAsync();
        }

        await page.GetByRole(AriaRole.Link, new() { Name = "See it drawn, with the working" }).First.ClickAsync();
        await PageChecks.FitsAsync(page);

        await page.Locator("svg.wall-picture:visible a[data-part=B3]").ClickAsync();

        await Expect(page.Locator("#cell")).ToContainTextAsync("Working of B3");
        await PageChecks.IsGoodAsync(page);
        await page.Locator(".strip a.back").ClickAsync();
        await page.Locator(".strip a.back").ClickAsync();
        await Expect(page).ToHaveURLAsync(workshop.Address.TrimEnd('/') + workshop.Filled("{osprey}/storage"));
    }
}
