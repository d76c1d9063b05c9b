using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>What was typed into a form that the server refuses comes back, and never over what was just sent.</summary>
/// <param name="workshop">The browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class DraftTests(Workshop workshop) : IAsyncLifetime
{
    private readonly EntryHost _host = new() { Form = Form("", "", wrong: false) };
    private IBrowserContext? _context;

    public async ValueTask InitializeAsync()
    {
        _host.Instead = form =>
        {
            _host.Form = Form(form["value"].ToString(), form["note"].ToString(), wrong: true);
            return _host.Shown(422);
        };
        await _host.StartAsync();
        _context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = _host.Address, ReducedMotion = ReducedMotion.Reduce });
    }

    public async ValueTask DisposeAsync()
    {
        await _context!.DisposeAsync();
        await _host.DisposeAsync();
    }

    [Fact]
    public async Task Both_fields_of_a_refused_form_stand_as_typed_after_the_page_is_loaded_anew()
    {
        var page = await OpenAsync();
        await page.Locator("#value").FillAsync("39x");
        await page.Locator("#note").FillAsync("second meter");
        await SendAsync(page);

        await ShowsAsync(page, "39x", "second meter");
        await AnewAsync(page);

        await ShowsAsync(page, "39x", "second meter");
    }

    [Fact]
    public async Task What_was_mended_on_the_refused_page_is_what_comes_back()
    {
        var page = await OpenAsync();
        await page.Locator("#value").FillAsync("39x");
        await page.Locator("#note").FillAsync("second meter");
        await SendAsync(page);
        await page.Locator("#value").FillAsync("3,9");
        await AnewAsync(page);

        await ShowsAsync(page, "3,9", "second meter");
    }

    [Fact]
    public async Task An_older_draft_of_another_tab_does_not_overwrite_what_was_just_sent()
    {
        var page = await OpenAsync();
        await page.Locator("#value").FillAsync("39x");
        await page.Locator("#note").FillAsync("second meter");
        var other = await OpenAsync();
        await other.Locator("#value").FillAsync("4,2");
        await other.Locator("#note").FillAsync("first meter");

        await SendAsync(page);
        await ShowsAsync(page, "39x", "second meter");
        await AnewAsync(page);

        await ShowsAsync(page, "39x", "second meter");
    }

    private static string Form(string value, string note, bool wrong) => $"""
        <form method="post" action="/entry" data-draft="air" class="card stack">
          <input type="hidden" name="key" value="11111111-1111-4111-8111-111111111111">
          <label for="value">Air, kg/h</label><input id="value" name="value" value="{value}"{(wrong ? " aria-invalid=\"true\"" : "")}>
          <label for="note">Note</label><input id="note" name="note" value="{note}">
          <button class="btn go">Keep</button>
        </form>
        """;

    private async Task<IPage> OpenAsync()
    {
        var page = await _context!.NewPageAsync();
        await page.GotoAsync("/entry");
        return page;
    }

    private static async Task SendAsync(IPage page)
    {
        var answer = await page.RunAndWaitForResponseAsync(() => page.Locator("form.card button").ClickAsync(), r => r.Request.Method is "POST");
        Assert.Equal(422, answer.Status);
        await Expect(page.Locator("#value")).ToHaveAttributeAsync("aria-invalid", "true");

        // Drafts are kept from when the modules have run, which is before the page is complete. Asked of the page itself: the event may have been and gone.
        await page.EvaluateAsync("() => document.readyState === 'complete' || new Promise(done => addEventListener('load', () => done(true)))");
    }

    // The server knows nothing of what was refused: the page comes with an empty form.
    private async Task AnewAsync(IPage page)
    {
        _host.Form = Form("", "", wrong: false);
        await page.GotoAsync("/entry");
    }

    private static async Task ShowsAsync(IPage page, string value, string note)
    {
        await Expect(page.Locator("#value")).ToHaveValueAsync(value);
        await Expect(page.Locator("#note")).ToHaveValueAsync(note);
    }
}
