using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A tank sketched on the sheet.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class SketchTests(Workshop workshop)
{
    private const string Says = "#sketch-says";

    [Fact]
    public async Task A_box_drawn_with_a_finger_reads_its_litres_is_dragged_wider_and_undone()
    {
        await using var window = await workshop.OpenAsync((390, 844));
        var page = await window.GoAsync(workshop.Filled("{tern}/storage/outline"));
        foreach (var (right, up, number) in new[] { (0, 0, 1), (402, 3, 2), (399, 252, 3), (1, 249, 4) })
        {
            var (x, y) = await OnScreenAsync(page, right, up);
            await page.Mouse.ClickAsync(x, y);
            await Expect(page.Locator($"#x{number + 1}")).ToHaveCountAsync(1);
        }

        await page.Locator("#depth").FillAsync("300");
        await page.Locator("#depth").PressAsync("Enter");
        await Expect(page.Locator(Says)).ToContainTextAsync("Holds 30.0 l");

        var (fromX, fromY) = await OnScreenAsync(page, 400, 250);
        var (toX, toY) = await OnScreenAsync(page, 500, 250);
        await page.Mouse.MoveAsync(fromX, fromY);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(toX, toY, new() { Steps = 4 });
        await Expect(page.Locator(Says)).ToContainTextAsync("Holds 33.8 l");
        await page.Mouse.UpAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("500_250", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)));

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(Says)).ToContainTextAsync("Holds 30.0 l");
        await PageChecks.FitsAsync(page);
    }

    [Fact]
    public async Task Without_scripts_the_figures_of_a_form_give_the_same()
    {
        await using var window = await workshop.OpenAsync((390, 844), "paper", Scripts.Off);
        var page = await window.GoAsync("/tanks/outline");
        foreach (var (name, value) in new[] { ("x1", "0"), ("y1", "0"), ("x2", "400"), ("y2", "0"), ("depth", "300") })
        {
            await page.Locator($"#{name}").FillAsync(value);
        }

        await page.Locator("#x2").PressAsync("Enter");
        foreach (var (name, value) in new[] { ("x3", "400"), ("y3", "250"), ("x4", "0"), ("y4", "250") })
        {
            await page.Locator($"#{name}").FillAsync(value);
        }

        await page.Locator("#y4").PressAsync("Enter");

        await Expect(page.Locator(Says)).ToContainTextAsync("Holds 30.0 l");
    }

    private static async Task<(float X, float Y)> OnScreenAsync(IPage page, double right, double up)
    {
        var place = await page.EvaluateAsync<float[]>(
            """
            ([right, up]) => {
              const sheet = document.querySelector('.phone-only[data-sheet]');
              sheet.scrollIntoView({ block: 'center' });
              const picture = sheet.querySelector('svg'), box = picture.getBoundingClientRect(), size = picture.viewBox.baseVal;
              return [box.left + (right - sheet.dataset.left) * sheet.dataset.scale * box.width / size.width, box.bottom - (up - sheet.dataset.low) * sheet.dataset.scale * box.width / size.width];
            }
            """,
            new[] { right, up });
        return (place[0], place[1]);
    }
}
