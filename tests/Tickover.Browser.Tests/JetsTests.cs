using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A trial from the tap to both maps, and what comes of it.</summary>
/// <param name="workshop">The app and the browser.</param>
/// <param name="output">Where the measured times are written.</param>
[Collection(typeof(OneBrowser))]
public sealed class JetsTests(Workshop workshop, ITestOutputHelper output)
{
    // From the tap to both maps and their difference, as the issue asks.
    private const double AllowedMilliseconds = 250;

    [Fact]
    public async Task A_size_tapped_shows_both_maps_and_their_difference_in_a_quarter_of_a_second()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/osprey-v8/jets?rpm=2750&throttle=11");
        await page.Locator(".section-picture a[data-part='barrel.idleJet'][tabindex='0'], .section-picture a[data-part='barrel.idleJet']").Last.ClickAsync();
        await Expect(page.Locator("#part-heading")).ToHaveTextAsync("Idle jet");
        var sizes = page.GetByRole(AriaRole.Navigation, new() { Name = "Sizes of Idle jet" }).GetByRole(AriaRole.Link);
        var times = new List<double>();

        foreach (var size in new[] { 3, 4, 1, 0 })
        {
            var milliseconds = await page.EvaluateAsync<double>("""
                n => new Promise(done => {
                  const start = performance.now();
                  document.addEventListener('tickover:swapped', () => requestAnimationFrame(() => done(performance.now() - start)), { once: true });
                  document.querySelectorAll('.sizes a')[n].click();
                })
                """, size);
            var server = await page.Locator("[data-server-ms]").GetAttributeAsync("data-server-ms");
            output.WriteLine($"size {await sizes.Nth(size).InnerTextAsync()}: {milliseconds:0} ms from tap to picture, of it the survey {server} ms");
            times.Add(milliseconds);
            await Expect(page.Locator("svg.difference-picture")).ToBeVisibleAsync();
            await Expect(page.Locator(".pair svg.mixture-picture")).ToHaveCountAsync(2);
        }

        times.Sort();
        Assert.True(times[times.Count / 2] < AllowedMilliseconds, $"median of {string.Join(", ", times.Select(t => $"{t:0}"))} ms, allowed {AllowedMilliseconds} ms");
    }

    [Fact]
    public async Task A_choke_is_tried_fitted_and_undone()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var path = Path.Combine(workshop.Folder, "tern-2800.car.json");
        var before = await File.ReadAllTextAsync(path);
        var page = await window.GoAsync("/cars/tern-2800/jets?part=choke");

        await page.Locator(".sizes a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Fit 6 ×", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)) }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("value=", StringComparison.Ordinal));
        Assert.NotEqual(before, await File.ReadAllTextAsync(path), StringComparer.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".strip button")).ToBeDisabledAsync();

        Assert.Equal(before, await File.ReadAllTextAsync(path), StringComparer.Ordinal);
    }

    [Fact]
    public async Task Half_a_form_survives_a_reload_and_goes_once_it_is_kept()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/gannet-1500#f-barrel-mainJet");

        await page.Locator("input[name='barrel.mainJet']").FillAsync("122,5");
        await page.ReloadAsync();
        await Expect(page.Locator("input[name='barrel.mainJet']")).ToHaveValueAsync("122,5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the figures" }).ClickAsync();

        await Expect(page.Locator(".notice")).ToContainTextAsync("Kept: one figure.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator("input[name='barrel.mainJet']")).ToHaveValueAsync("120");
    }

    [Fact]
    public async Task A_part_tapped_on_the_drawing_of_the_description_opens_its_field()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/gannet-1500");

        await page.Locator(".section-picture:visible a[data-part='barrel.choke']").Last.ClickAsync();

        await Expect(page.Locator("input[name='barrel.choke']")).ToBeFocusedAsync();
    }
}
