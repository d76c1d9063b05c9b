using Microsoft.Playwright;
using Tickover.Workshop.Cars;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A trial from the tap to both maps, and what comes of it.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class JetsTests(Workshop workshop)
{
    [Fact]
    public async Task A_size_tapped_shows_both_maps_and_their_difference()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/osprey-v8/jets?rpm=2750&throttle=11");
        await page.Locator(".section-picture:visible a[data-part='barrel.idleJet'] text").Last.ClickAsync();
        await Expect(page.Locator("#part-heading")).ToHaveTextAsync("Idle jet");
        var sizes = page.GetByRole(AriaRole.Navigation, new() { Name = "Sizes of Idle jet" }).GetByRole(AriaRole.Link);
        var fitted = await page.Locator(".size.was b").InnerTextAsync();
        foreach (var size in new[] { 3, 0 })
        {
            var address = page.Url;
            await sizes.Nth(size).ClickAsync();
            await page.WaitForURLAsync(url => !string.Equals(url, address, StringComparison.Ordinal));
            await Expect(sizes.Nth(size)).ToHaveAttributeAsync("aria-current", "true");
            await Expect(page.Locator("svg.difference-picture")).ToBeVisibleAsync();
            await Expect(page.Locator(".pair svg.mixture-picture")).ToHaveCountAsync(2);
            await Expect(page.Locator(".section-picture:visible a[aria-current] text").Last).ToHaveTextAsync($"{fitted} → {await sizes.Nth(size).Locator("b").InnerTextAsync()}");
        }
    }

    [Fact]
    public async Task A_choke_is_tried_fitted_and_undone()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var tern = CarId.Read("tern-2800")!;
        var before = workshop.Shelf.Read(tern)!.Document;
        var page = await window.GoAsync("/cars/tern-2800/jets?part=choke");

        await page.Locator(".sizes a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Fit 6 ×", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)) }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("value=", StringComparison.Ordinal));
        Assert.NotEqual(before, workshop.Shelf.Read(tern)!.Document, StringComparer.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();

        Assert.Equal(before, workshop.Shelf.Read(tern)!.Document, StringComparer.Ordinal);
    }

    [Fact]
    public async Task Half_a_form_survives_a_reload_and_goes_once_it_is_kept()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/gannet-1500#f-barrel-mainJet");

        var fitted = await page.Locator("input[name='barrel.mainJet']").InputValueAsync();
        await page.Locator("input[name='barrel.mainJet']").FillAsync("122,5");
        await page.ReloadAsync();
        await Expect(page.Locator("input[name='barrel.mainJet']")).ToHaveValueAsync("122,5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the figures" }).ClickAsync();

        await Expect(page.Locator(".notice")).ToContainTextAsync("Kept: one figure.");
        await page.WaitForFunctionAsync("() => !Object.keys(localStorage).some(k => k.startsWith('tickover-draft:'))");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator("input[name='barrel.mainJet']")).ToHaveValueAsync(fitted);
    }

    [Fact]
    public async Task A_part_tapped_on_the_drawing_of_the_description_opens_its_field()
    {
        await using var window = await workshop.OpenAsync((1280, 800));
        var page = await window.GoAsync("/cars/gannet-1500");

        await page.Locator(".section-picture:visible a[data-part='barrel.choke'] text").Last.ClickAsync();

        await Expect(page.Locator("input[name='barrel.choke']")).ToBeFocusedAsync();
    }
}
