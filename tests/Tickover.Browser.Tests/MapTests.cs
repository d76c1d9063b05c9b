using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>The map under the hand.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class MapTests(Workshop workshop)
{
    private static readonly TimeSpan OneSecond = TimeSpan.FromSeconds(1);

    private const string Mixture = "/cars/osprey-v8/mixture";

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task A_tap_looks_at_the_place_under_the_finger(int width, int height)
    {
        await using var window = await workshop.OpenAsync((width, height));
        var page = await window.GoAsync(Mixture);
        var picture = page.Locator("#map svg[data-plot-left]:visible");
        var box = (await picture.BoundingBoxAsync())!;
        var axes = await picture.EvaluateAsync<double[]>(
            "s => [s.viewBox.baseVal.width, s.dataset.plotLeft, s.dataset.plotTop, s.dataset.plotWidth, s.dataset.plotHeight, s.dataset.xFrom, s.dataset.xTo, s.dataset.yFrom, s.dataset.yTo].map(Number)");
        var scale = box.Width / axes[0];

        // Half across is the middle speed; half up on a root scale is a quarter of the way to wide open.
        await page.Mouse.ClickAsync((float)(box.X + scale * (axes[1] + axes[3] / 2)), (float)(box.Y + scale * (axes[2] + axes[4] / 2)));
        await page.WaitForURLAsync(url => url.Contains("rpm=", StringComparison.Ordinal));

        var rpm = double.Parse(await page.Locator("input[name=rpm]").InputValueAsync(), CultureInfo.InvariantCulture);
        var throttle = double.Parse(await page.Locator("input[name=throttle]").InputValueAsync(), CultureInfo.InvariantCulture);
        var root = (Math.Sqrt(axes[7]) + Math.Sqrt(axes[8])) / 2;
        Assert.Equal((axes[5] + axes[6]) / 2, rpm, tolerance: 30);
        Assert.Equal(root * root, throttle, tolerance: 1);
        Assert.Equal(1, await page.Locator("#map [data-ring]:visible").CountAsync());
        await Expect(page.Locator("svg.cross-section-picture").First).ToHaveAttributeAsync("aria-label", new Regex($"^λ over engine speed at {Tickover.Reports.Shown.Opening(throttle)} of throttle: ", RegexOptions.None, OneSecond));
        await page.Locator(".working summary").ClickAsync();
        await Expect(page.Locator(".working li").Last).ToContainTextAsync("Lambda");
    }

    [Fact]
    public async Task Arrow_keys_walk_the_map_and_the_back_button_walks_back()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync($"{Mixture}?rpm=2750&throttle=11");

        await page.Locator("#map").FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Locator("#point-heading")).ToContainTextAsync("12°");
        Assert.Equal("map", await page.EvaluateAsync<string>("() => document.activeElement.id"));
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator("#point-heading")).Not.ToContainTextAsync("2,750");
        await page.GoBackAsync();
        await page.GoBackAsync();

        await Expect(page.Locator("#point-heading")).ToHaveTextAsync("2,750\u202Frpm, 11° of throttle");
    }

    [Fact]
    public async Task The_working_stays_open_from_place_to_place()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync($"{Mixture}?rpm=2750&throttle=11");

        await page.Locator(".working summary").ClickAsync();
        await page.Locator("input[name=throttle]").FillAsync("20,5");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("#point-heading")).ToContainTextAsync("21°");
        await Expect(page.Locator(".working li").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Everything_works_without_scripts()
    {
        await using var window = await workshop.OpenAsync((1280, 800), scripts: Scripts.Off);
        var page = await window.GoAsync(Mixture);

        await page.Locator(".places a").Nth(5).ClickAsync();
        Assert.Contains("rpm=", page.Url, StringComparison.Ordinal);
        await page.Locator("input[name=rpm]").FillAsync("3000");
        await page.Locator("input[name=throttle]").FillAsync("15");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look here" }).ClickAsync();
        await Expect(page.Locator("#point-heading")).ToHaveTextAsync("3,000\u202Frpm, 15° of throttle");
        await page.Locator(".working summary").ClickAsync();
        await Expect(page.Locator(".working li").First).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Choose jets" }).ClickAsync();
        await page.Locator(".section-picture:visible a[data-part='barrel.idleJet'] text").Last.ClickAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Sizes of Idle jet" }).GetByRole(AriaRole.Link).First.ClickAsync();

        await Expect(page.Locator("svg.difference-picture")).ToBeVisibleAsync();
    }
}
