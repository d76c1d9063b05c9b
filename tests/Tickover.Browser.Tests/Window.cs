using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>A window of the browser that notes what must not happen.</summary>
public sealed class Window : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly bool _runsScripts;
    private readonly ConcurrentQueue<string> _wrong = new();

    /// <summary>Watches a window.</summary>
    /// <param name="context">Its context.</param>
    /// <param name="page">Its page.</param>
    /// <param name="address">The only address it may ask anything of.</param>
    /// <param name="scripts">Whether its pages run scripts.</param>
    public Window(IBrowserContext context, IPage page, string address, Scripts scripts)
    {
        _context = context;
        _runsScripts = scripts == Scripts.On;
        Page = page;
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal))
            {
                _wrong.Enqueue($"asked elsewhere: {request.Url}");
            }
        };
        page.Console += (_, message) =>
        {
            // A page answered with 4xx on purpose is told to the console by the browser; that is no fault of the page.
            if (message.Type is "error" or "warning" && !message.Text.Contains("the server responded with a status of 4", StringComparison.Ordinal))
            {
                _wrong.Enqueue($"console: {message.Text}");
            }
        };
        page.PageError += (_, fault) => _wrong.Enqueue($"script: {fault}");
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Goes to an address and waits until the page, its scripts and its letters are there.</summary>
    /// <param name="address">Address on the app.</param>
    /// <returns>The page.</returns>
    public async Task<IPage> GoAsync(string address)
    {
        await Page.GotoAsync(address, new PageGotoOptions { WaitUntil = WaitUntilState.Load });
        if (_runsScripts)
        {
            await Page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
        }

        return Page;
    }

    /// <summary>Chooses jets on the page of a visit's road logs, unless they are chosen, and waits for the proposal.</summary>
    /// <param name="address">Address of the page.</param>
    /// <returns>When the proposal is there.</returns>
    public async Task ChooseJetsAsync(string address)
    {
        const int patience = 240;
        await GoAsync(address);
        if (await Page.GetByRole(AriaRole.Button, new() { Name = "Choose jets" }).IsVisibleAsync())
        {
            await Page.GetByRole(AriaRole.Button, new() { Name = "Choose jets" }).ClickAsync();
        }

        for (var second = 0; second < patience && await Page.Locator("section.next table.shares").CountAsync() == 0; second++)
        {
            await Page.WaitForTimeoutAsync(1000);
            await GoAsync(address);
        }

        await Assertions.Expect(Page.Locator("section.next table.shares")).ToBeVisibleAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        Assert.Empty(_wrong);
    }
}
