using System.Collections.Concurrent;
using Microsoft.AspNetCore.Http;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>What is entered reaches the server once, whatever happens to the Wi-Fi, the server, the page and the tab.</summary>
/// <param name="workshop">The browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class OutboxTests(Workshop workshop) : IAsyncLifetime
{
    // Longest wait between two tries is 30 s; a try at once follows "online". A minute tells a slow machine from a lost entry.
    private const float Patience = 60_000;

    // The page's clock stands still, so the wait for the form to clear goes by messages, not by timers.
    private const string EnterAndWait = """
        async value => {
          const field = document.getElementById('value');
          field.value = value;
          field.form.requestSubmit();
          while (field.value !== '') {
            await new Promise(done => { const way = new MessageChannel(); way.port1.onmessage = done; way.port2.postMessage(0); });
          }
        }
        """;

    private readonly EntryHost _host = new();
    private readonly ConcurrentQueue<string> _faults = new();
    private IBrowserContext? _context;

    private IBrowserContext Context => _context!;

    public async ValueTask InitializeAsync()
    {
        await _host.StartAsync();
        _context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = _host.Address, ReducedMotion = ReducedMotion.Reduce });
    }

    public async ValueTask DisposeAsync()
    {
        await Context.DisposeAsync();
        await _host.DisposeAsync();
        Assert.Empty(_faults);
    }

    [Fact]
    public async Task An_entry_is_kept_sent_and_shown_without_a_reload_and_without_disturbing_what_is_typed()
    {
        var page = await OpenAsync();
        await page.EvaluateAsync("() => { window.same = true; }");

        await EnterAsync(page, "3,9");
        await page.Locator("#inside").PressSequentiallyAsync("half");
        await Expect(page.Locator("#readings li")).ToHaveTextAsync(["3,9"]);
        await page.Locator("#inside").PressSequentiallyAsync(" typed");

        await Expect(page.Locator("#inside")).ToHaveValueAsync("half typed");
        await Expect(page.Locator("#value")).ToHaveValueAsync("");
        await Expect(page.Locator("#tray")).ToHaveTextAsync("All sent");
        Assert.True(await page.EvaluateAsync<bool>("() => window.same === true"));
        Assert.NotEqual("11111111-1111-4111-8111-111111111111", Assert.Single(_host.Kept).Key, StringComparer.Ordinal);
    }

    [Fact]
    public async Task Without_scripts_the_form_is_posted_with_the_key_of_the_page()
    {
        await using var plain = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = _host.Address, JavaScriptEnabled = false });
        var page = await plain.NewPageAsync();
        await page.GotoAsync("/entry");

        await EnterAsync(page, "3.9");

        await Expect(page.Locator("#readings li")).ToHaveTextAsync(["3.9"]);
        await Expect(page.Locator("#tray")).ToBeHiddenAsync();
        Assert.Equal("11111111-1111-4111-8111-111111111111", Assert.Single(_host.Kept).Key, StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_server_away_for_a_minute_and_restarted_gets_all_in_order_and_none_twice()
    {
        var page = await OpenAsync(simulatedTime: true);
        await _host.StopAsync();
        foreach (var value in new[] { "1", "2", "3", "4", "5" })
        {
            await EnterAsync(page, value);
            await Expect(page.Locator(".kept-here")).ToContainTextAsync($"Air {value} kg/h: kept here");
            await page.Clock.RunForAsync(12_000);
        }

        await Expect(page.Locator("#tray")).ToContainTextAsync("5 kept here, no answer since");
        await page.Locator("#note").FillAsync("half a sen");
        await _host.StartAsync();
        await page.Clock.RunForAsync(31_000);

        await AllSentAsync(page);
        Assert.Equal(["1", "2", "3", "4", "5"], _host.Order, StringComparer.Ordinal);
        await Expect(page.Locator("#note")).ToHaveValueAsync("half a sen");
    }

    [Fact]
    [Trait("Speed", "slow")]
    public async Task Five_hundred_entries_in_ten_minutes_without_wifi_lose_none_and_double_none()
    {
        var page = await OpenAsync(simulatedTime: true);
        await Context.SetOfflineAsync(true);
        for (var i = 0; i < 500; i++)
        {
            await page.EvaluateAsync(EnterAndWait, $"n{i}");
            await page.Clock.RunForAsync(1_200);
        }

        await Expect(page.Locator("#tray")).ToContainTextAsync("500 kept here, no Wi-Fi since");
        await _host.StopAsync();
        await _host.StartAsync();
        _host.AnswersToLose = 3;
        await Context.SetOfflineAsync(false);
        for (var i = 0; i < 10; i++)
        {
            await page.Clock.RunForAsync(2_000);
        }

        await ArrivedAsync(500);
        await AllSentAsync(page);
        Assert.Equal(Enumerable.Range(0, 500).Select(i => $"n{i}"), _host.Order, StringComparer.Ordinal);
        Assert.Equal(500, _host.Kept.Count);
        Assert.Equal(503, _host.Posts);
    }

    [Fact]
    public async Task An_answer_lost_on_the_way_costs_a_second_post_with_the_same_key_and_no_second_entry()
    {
        var page = await OpenAsync();
        _host.AnswersToLose = 2;

        await EnterAsync(page, "3.9");

        await ArrivedAsync(1);
        await AllSentAsync(page);
        Assert.Single(_host.Kept);
        Assert.Equal(["3.9"], _host.Order, StringComparer.Ordinal);
        Assert.Equal(3, _host.Posts);
    }

    [Fact]
    public async Task What_waits_and_what_is_half_typed_survive_a_closed_tab()
    {
        var page = await OpenAsync();
        await _host.StopAsync();
        await EnterAsync(page, "3.9");
        await Expect(page.Locator("#tray")).ToContainTextAsync("1 kept here");
        await page.Locator("#note").PressSequentiallyAsync("hisses at the thi");
        await page.CloseAsync();
        await _host.StartAsync();

        page = await OpenAsync();

        await Expect(page.Locator("#note")).ToHaveValueAsync("hisses at the thi");
        await ArrivedAsync(1);
        await AllSentAsync(page);
        Assert.Equal(["3.9"], _host.Order, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false, Traits = ["Speed", "slow"])]
    public async Task Two_tabs_send_each_entry_once(bool locks)
    {
        if (!locks)
        {
            await Context.AddInitScriptAsync("delete Navigator.prototype.locks; delete Crypto.prototype.randomUUID;");
        }

        var one = await OpenAsync();
        var other = await OpenAsync();
        for (var i = 0; i < 20; i++)
        {
            await EnterAsync(i % 2 == 0 ? one : other, $"n{i}");
        }

        await ArrivedAsync(20);
        await AllSentAsync(one);
        await AllSentAsync(other);
        Assert.Equal(20, _host.Kept.Count);
        Assert.Equal(20, _host.Posts);
        await Expect(one.Locator("#readings li")).ToHaveCountAsync(20);
        await Expect(other.Locator("#readings li")).ToHaveCountAsync(20);
    }

    [Fact]
    public async Task What_the_server_refuses_waits_for_a_decision_with_its_words_and_can_be_put_back()
    {
        _host.Instead = form => form["value"] == "39"
            ? Results.Json(new { status = "clashed", words = "Barrel 4 was read by somebody else." }, statusCode: StatusCodes.Status409Conflict)
            : null;
        var page = await OpenAsync();

        await EnterAsync(page, "39");
        await EnterAsync(page, "3.9");

        await Expect(page.Locator("#readings li")).ToHaveTextAsync(["3.9"]);
        await Expect(page.Locator("#tray")).ToContainTextAsync("1 needs a look");
        await page.Locator("#tray").ClickAsync();
        var entry = page.Locator("#tray-list [data-tray-part=look] li");
        await Expect(entry).ToContainTextAsync("Barrel 4 was read by somebody else.");
        await Expect(entry.Locator("dd")).ToHaveTextAsync(["39"]);
        await Expect(entry.GetByRole(AriaRole.Link)).ToHaveAttributeAsync("href", $"{_host.Address}/entry");
        await entry.GetByRole(AriaRole.Button, new() { Name = "Take it off" }).ClickAsync();
        await Expect(page.Locator("#tray-list [data-tray-part=off] button")).ToBeFocusedAsync();
        _host.Instead = _ => null;
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("[data-tray-empty]")).ToBeVisibleAsync();
        await Expect(page.Locator("#readings li")).ToHaveCountAsync(2);
        Assert.Equal(["3.9", "39"], _host.Order, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(401)]
    [InlineData(403)]
    [InlineData(503)]
    [InlineData(200)]
    public async Task An_answer_that_is_no_word_of_ours_keeps_the_entry(int status)
    {
        _host.Instead = _ => Results.Content("<p>Welcome to the Wi-Fi</p>", "text/html", statusCode: status);
        var page = await OpenAsync();

        await EnterAsync(page, "3.9");
        await Expect(page.Locator("#tray")).ToContainTextAsync("1 kept here,");
        _host.Instead = _ => null;

        await AllSentAsync(page);
        Assert.Equal(["3.9"], _host.Order, StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_keeps_nothing_posts_plainly_and_says_so()
    {
        await Context.AddInitScriptAsync("Object.defineProperty(window, 'indexedDB', { get() { throw new DOMException('no', 'SecurityError'); } });");
        var page = await OpenAsync();

        await EnterAsync(page, "3.9");

        await Expect(page.Locator("#readings li")).ToHaveTextAsync(["3.9"]);
        await Expect(page.Locator("#tray")).ToContainTextAsync("This browser keeps nothing");
    }

    private async Task<IPage> OpenAsync(bool simulatedTime = false)
    {
        var page = await Context.NewPageAsync();
        page.PageError += (_, fault) => _faults.Enqueue(fault);
        if (simulatedTime)
        {
            await page.Clock.InstallAsync();
        }

        await page.GotoAsync("/entry");
        return page;
    }

    private static async Task EnterAsync(IPage page, string value)
    {
        await page.Locator("#value").FillAsync(value);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep", Exact = true }).ClickAsync();
    }

    // The tray says "All sent" from the start; only the server can say that an entry has come.
    private async Task ArrivedAsync(int count)
    {
        for (var k = 0; k < 600 && _host.Kept.Count < count; k++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
    }

    private static Task AllSentAsync(IPage page) =>
        Expect(page.Locator("#tray")).ToHaveTextAsync("All sent", new LocatorAssertionsToHaveTextOptions { Timeout = Patience });
}
