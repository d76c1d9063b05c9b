using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A linkage whose pedal is moved: by hand, by key, without scripts, without the server.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class LinkageTests(Workshop workshop)
{
    private const string Drawing = "[data-pedal-drawing] svg:visible";

    [Theory]
    [InlineData("osprey", 1280, 800, "paper")]
    [InlineData("osprey", 390, 844, "evening")]
    [InlineData("tern", 1280, 800, "daylight")]
    [InlineData("tern", 390, 844, "paper")]
    public async Task The_drawing_follows_the_handle_and_no_word_of_it_lies_on_another(string linkage, int width, int height, string theme)
    {
        await using var window = await workshop.OpenAsync((width, height), theme);
        var page = await window.GoAsync($"/linkages/{linkage}?down=0");
        var handle = page.Locator("input[data-pedal]");
        await handle.FocusAsync();

        foreach (var (key, down) in new[] { ("ArrowRight", 1), ("PageUp", 11), ("End", 100), ("PageDown", 90), ("Home", 0) })
        {
            await page.Keyboard.PressAsync(key);
            await Expect(handle).ToHaveValueAsync($"{down}");
            await Expect(page.Locator(Drawing)).ToHaveAttributeAsync("aria-label", Said($"with the pedal {down} % down"));
            Assert.Equal([], await OverlapsAsync(page));
            await PageChecks.FitsAsync(page);
        }

        Assert.EndsWith("down=0", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plates_move_with_the_pedal_and_stand_alike_once_set()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/linkages/tern?down=20");
        var shut = await page.Locator(Drawing).InnerHTMLAsync();

        await page.Locator("input[data-pedal]").FillAsync("60");
        await Expect(page.Locator("[data-pedal-words]")).ToHaveTextAsync("60\u202F%");
        await Expect(page.Locator(Drawing)).Not.ToHaveAttributeAsync("aria-label", Said("pedal 20 %"));
        Assert.NotEqual(shut, await page.Locator(Drawing).InnerHTMLAsync(), StringComparer.Ordinal);
        await page.GetByRole(AriaRole.Link, new() { Name = "As advised" }).ClickAsync();

        await Expect(page).ToHaveURLAsync(Said("down=60&set=1"));
        Assert.DoesNotContain("high", await page.Locator(Drawing).TextContentAsync() ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_pedal_moves_on_while_the_server_is_away_and_says_what_is_drawn()
    {
        // A context of its own: a browser that is offline tells its console so.
        await using var context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = workshop.Address, ViewportSize = new ViewportSize { Width = 1280, Height = 800 } });
        var page = await context.NewPageAsync();
        await page.GotoAsync("/linkages/osprey?down=0");
        await Expect(page.Locator("[data-pedal-drawing=at-hand]")).ToHaveCountAsync(1, new() { Timeout = 30_000 });
        await context.SetOfflineAsync(true);

        await page.Locator("input[data-pedal]").FillAsync("62");

        await Expect(page.Locator("[data-pedal-away]")).ToBeVisibleAsync();
        await Expect(page.Locator(Drawing)).ToContainTextAsync("pedal 60\u202F% down");
        await context.SetOfflineAsync(false);
        await page.Locator("input[data-pedal]").FillAsync("63");
        await Expect(page.Locator("[data-pedal-away]")).ToBeHiddenAsync();
        await Expect(page.Locator(Drawing)).ToContainTextAsync("pedal 63\u202F% down");
    }

    [Fact]
    public async Task From_a_visit_to_its_linkage_and_back_without_scripts()
    {
        await using var window = await workshop.OpenAsync((390, 844), "paper", Scripts.Off);
        var page = await window.GoAsync(workshop.Filled("{osprey}/balance"));
        await page.GetByRole(AriaRole.Link, new() { Name = "Linkage", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Open Larkfield Osprey V8, throttle linkage" }).ClickAsync();

        await page.Locator("input[data-pedal]").PressAsync("End");
        await page.GetByRole(AriaRole.Button, new() { Name = "Move" }).ClickAsync();
        await Expect(page.Locator(Drawing)).ToHaveAttributeAsync("aria-label", Said("with the pedal 100 % down"));
        await page.Locator(".strip a.back").ClickAsync();
        await page.Locator(".strip a.back").ClickAsync();

        await Expect(page).ToHaveURLAsync(workshop.Address.TrimEnd('/') + workshop.Filled("{osprey}/balance"));
    }

    private static Regex Said(string words) => new(Regex.Escape(words), RegexOptions.None, TimeSpan.FromSeconds(1));

    private static async Task<IReadOnlyList<string>> OverlapsAsync(IPage page)
    {
        var found = await page.EvaluateAsync<JsonElement>("""
            () => {
              const words = [...document.querySelectorAll('[data-pedal-drawing] svg text')].map(t => [t.textContent, t.getBoundingClientRect()]).filter(([, b]) => b.width > 0);
              return words.flatMap(([a, p], i) => words.slice(i + 1)
                .filter(([, q]) => Math.min(p.right, q.right) - Math.max(p.left, q.left) > 1 && Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top) > 4)
                .map(([b]) => `${a} / ${b}`));
            }
            """);
        return [.. found.EnumerateArray().Select(e => e.GetString()!)];
    }
}
