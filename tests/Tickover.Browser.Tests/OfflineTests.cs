using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>With the server away the page last seen comes back, says so, and takes entries.</summary>
/// <param name="workshop">The browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class OfflineTests(Workshop workshop) : IAsyncLifetime
{
    private readonly EntryHost _host = new();
    private IBrowserContext? _context;
    private IPage? _page;

    private IPage Page => _page!;

    public async ValueTask InitializeAsync()
    {
        await _host.StartAsync();
        _context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = _host.Address, ReducedMotion = ReducedMotion.Reduce });
        _page = await _context.NewPageAsync();
        await _page.GotoAsync("/entry");
        await _page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await _page.ReloadAsync();
        await Expect(_page.Locator("#tray")).ToBeVisibleAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _context!.DisposeAsync();
        await _host.DisposeAsync();
    }

    [Fact]
    public async Task A_reload_without_the_server_shows_the_page_the_draft_and_what_waits()
    {
        await _host.StopAsync();
        await Page.Locator("#value").FillAsync("3.9");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await Expect(Page.Locator(".kept-here")).ToContainTextAsync("Air 3.9 kg/h: kept here");
        await Page.Locator("#note").PressSequentiallyAsync("hisses at the thi");

        await Page.ReloadAsync();

        await Expect(Page.Locator(".as-of")).ToContainTextAsync("the server does not answer");
        await Expect(Page.Locator("#note")).ToHaveValueAsync("hisses at the thi");
        await Expect(Page.Locator(".kept-here")).ToContainTextAsync("Air 3.9 kg/h: kept here");
        await Page.Locator("#value").FillAsync("4.0");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await _host.StartAsync();
        await Expect(Page.Locator("#tray")).ToHaveTextAsync("All sent", new LocatorAssertionsToHaveTextOptions { Timeout = 60_000 });
        Assert.Equal(["3.9", "4.0"], _host.Order, StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_device_no_longer_let_in_keeps_its_entries_and_no_pages()
    {
        Assert.NotEqual(0, await PagesKeptAsync());
        _host.Instead = _ => Results.StatusCode(StatusCodes.Status401Unauthorized);

        await Page.Locator("#value").FillAsync("3.9");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();

        await Expect(Page.Locator("#tray")).ToContainTextAsync("1 kept here, this device is not let in");
        Assert.Equal(0, await PagesKeptAsync());
    }

    [Fact]
    public async Task The_app_can_be_installed()
    {
        var session = await _context!.NewCDPSessionAsync(Page);
        var answer = await session.SendAsync("Page.getInstallabilityErrors");
        var errors = answer!.Value.GetProperty("installabilityErrors").EnumerateArray().Select(e => e.GetProperty("errorId").GetString()!);
        var manifest = (await session.SendAsync("Page.getAppManifest"))!.Value;

        // A context of Playwright is a private window, where nothing is installed; every other reason would be ours.
        Assert.Equal(["in-incognito"], errors, StringComparer.Ordinal);
        Assert.Empty(manifest.GetProperty("errors").EnumerateArray());
        using var parsed = JsonDocument.Parse(manifest.GetProperty("data").GetString()!);
        foreach (var icon in parsed.RootElement.GetProperty("icons").EnumerateArray())
        {
            var got = await Page.APIRequest.GetAsync(_host.Address + icon.GetProperty("src").GetString());
            Assert.Equal(icon.GetProperty("type").GetString(), got.Headers["content-type"], StringComparer.Ordinal);
        }
    }

    private Task<int> PagesKeptAsync() =>
        Page.EvaluateAsync<int>("() => caches.open('tickover-pages').then(c => c.keys()).then(k => k.length)");
}
