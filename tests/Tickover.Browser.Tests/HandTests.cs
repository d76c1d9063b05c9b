using System.Collections.Concurrent;
using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>What the hand meets: the keypad, the question about an odd figure, the button that is held, the photograph.</summary>
/// <param name="workshop">The browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class HandTests(Workshop workshop) : IAsyncLifetime
{
    private const string Form = """
        <form method="post" action="/entry" data-outbox="Air {value}" class="card stack">
          <label for="value">Air, barrel 4</label>
          <input id="value" name="value" required inputmode="decimal" autocomplete="off" data-keypad data-unit="kg/h" data-units="kg/h|lb/h" data-no-reading data-plausible="2 6">
          <button class="btn">Keep it</button>
        </form>
        <form method="post" action="/entry" data-outbox="Going down" class="card stack">
          <input type="hidden" name="value" value="down"><button class="btn big" data-hold="1500">Hold to go down</button>
        </form>
        <form method="post" action="/entry" enctype="multipart/form-data" data-outbox="Photograph" class="card stack">
          <input type="hidden" name="value" value="photo"><label for="photo">Photograph</label>
          <input type="file" id="photo" name="photo" accept="image/*" capture="environment" data-photo><button class="btn">Keep the photograph</button>
        </form>
        """;

    private readonly EntryHost _host = new() { Form = Form };
    private readonly ConcurrentQueue<string> _faults = new();
    private IBrowserContext? _context;
    private IPage? _page;

    private IPage Page => _page!;

    public async ValueTask InitializeAsync()
    {
        await _host.StartAsync();
        _context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = _host.Address,
            ReducedMotion = ReducedMotion.Reduce,
            ViewportSize = new ViewportSize { Width = 390, Height = 844 },
        });
        _page = await _context.NewPageAsync();
        _page.PageError += (_, fault) => _faults.Enqueue(fault);
        _page.Console += (_, message) =>
        {
            if (message.Type is "error")
            {
                _faults.Enqueue(message.Text);
            }
        };
        await _page.GotoAsync("/entry");
    }

    public async ValueTask DisposeAsync()
    {
        await _context!.DisposeAsync();
        await _host.DisposeAsync();
        Assert.Empty(_faults);
    }

    [Fact]
    public async Task A_figure_is_tapped_in_and_Keep_says_what_will_be_kept()
    {
        await Page.Locator("#value").ClickAsync();
        foreach (var key in new[] { "3", "point", "point", "8", "back", "9", "sign", "sign" })
        {
            await Key(key).ClickAsync();
        }

        await Expect(Key("keep")).ToHaveTextAsync("Keep 3.9 kg/h");
        await Expect(Page.Locator("#value")).ToBeFocusedAsync();
        await Key("keep").ClickAsync();

        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["3.9"]);
        await Expect(Key("keep")).ToHaveTextAsync("Keep");
        await Expect(Page.Locator("#value")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_keys_are_64_px_8_px_apart_below_the_field_and_axe_finds_no_barrier()
    {
        await Page.Locator("#value").ClickAsync();
        var field = (await Page.Locator("#value").BoundingBoxAsync())!;
        var seven = (await Key("7").BoundingBoxAsync())!;
        var eight = (await Key("8").BoundingBoxAsync())!;
        var four = (await Key("4").BoundingBoxAsync())!;

        Assert.True(seven.Width >= 64 && seven.Height >= 64, $"{seven.Width} x {seven.Height}");
        Assert.Equal(8, eight.X - seven.X - seven.Width, 0.5);
        Assert.Equal(8, four.Y - seven.Y - seven.Height, 0.5);
        Assert.True(seven.Y >= field.Y + field.Height);
        await HasNoBarrierAsync();
    }

    [Fact]
    public async Task Typing_with_a_comma_is_kept_by_Enter_and_the_keypad_stays_closed_once_closed()
    {
        await Page.Locator("#value").ClickAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Close the keypad" }).ClickAsync();
        await Page.Locator("#value").PressSequentiallyAsync("3,5");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["3,5"]);
        await Page.ReloadAsync();

        await Page.Locator("#value").ClickAsync();
        await Expect(Page.Locator(".keypad")).ToHaveCountAsync(0);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keypad: Air, barrel 4" }).ClickAsync();

        await Expect(Page.Locator(".keypad")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task An_odd_figure_is_asked_about_once_beside_itself()
    {
        await Page.Locator("#value").ClickAsync();
        await Page.Keyboard.TypeAsync("39");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("39 kg/h? Usually 2 to 6. Keep 39 or mend it.");
        Assert.Equal(0, _host.Posts);
        await HasNoBarrierAsync();

        await Page.GetByRole(AriaRole.Button, new() { Name = "Mend it" }).ClickAsync();
        await Page.Keyboard.TypeAsync("38");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("38 kg/h?");
        await Page.Keyboard.PressAsync("Enter");

        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["38"]);
        await Expect(Page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task No_reading_is_a_reading_with_a_reason_and_another_unit_goes_with_the_figure()
    {
        await Page.Locator("#value").ClickAsync();
        await Key("none").ClickAsync();
        await Page.GetByLabel("Why is there no reading?").FillAsync("Adapter does not fit");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator("#readings li")).ToHaveCountAsync(1);
        Assert.Equal("Adapter does not fit", Assert.Single(_host.Kept).Value["noReading"], StringComparer.Ordinal);

        await Page.Locator("#value").FillAsync("8");
        await Page.GetByRole(AriaRole.Button, new() { Name = "lb/h" }).ClickAsync();
        await Expect(Key("keep")).ToHaveTextAsync("Keep 8 lb/h");
        await Key("keep").ClickAsync();

        await Expect(Page.Locator("#readings li").Nth(1)).ToHaveTextAsync("8 lb/h");
    }

    [Theory]
    [InlineData("mouse")]
    [InlineData("Space")]
    [InlineData("Enter")]
    public async Task A_held_button_acts_after_its_time_and_not_before(string by)
    {
        var button = Page.GetByRole(AriaRole.Button, new() { Name = "Hold to go down" });
        await button.HoverAsync();
        await button.FocusAsync();

        await DownAsync(by);
        await Page.WaitForTimeoutAsync(400);
        await UpAsync(by);
        await Page.WaitForTimeoutAsync(300);
        Assert.Equal(0, _host.Posts);
        await DownAsync(by);
        await Page.WaitForTimeoutAsync(1_900);
        await UpAsync(by);

        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["down"]);
        await Page.WaitForTimeoutAsync(300);
        Assert.Equal(1, _host.Posts);
    }

    [Fact]
    public async Task Who_cannot_hold_presses_twice()
    {
        await Page.GetByRole(AriaRole.Button, new() { Name = "Hold to go down" }).ClickAsync();
        await HasNoBarrierAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Yes, going down now" }).ClickAsync();

        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["down"]);
        Assert.Equal(1, _host.Posts);
    }

    [Fact]
    public async Task A_photograph_is_made_smaller_and_marked_with_arrows()
    {
        await Page.Locator("#photo").SetInputFilesAsync(new FilePayload { Name = "body.png", MimeType = "image/png", Buffer = await PictureAsync(3200, 1600) });
        var sheet = Page.Locator(".marks canvas");
        await sheet.ScrollIntoViewIfNeededAsync();
        var box = (await sheet.BoundingBoxAsync())!;
        foreach (var (x, y) in new[] { (0.25f, 0.25f), (0.75f, 0.5f), (0.1f, 0.1f), (0.2f, 0.2f) })
        {
            await sheet.ClickAsync(new LocatorClickOptions { Position = new Position { X = box.Width * x, Y = box.Height * y } });
        }

        await Page.GetByRole(AriaRole.Button, new() { Name = "Take back the last" }).ClickAsync();
        await Page.GetByLabel("Arrow 1: note").FillAsync("worn bush");
        await HasNoBarrierAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep the photograph" }).ClickAsync();

        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["photo"]);
        var (key, fields) = Assert.Single(_host.Kept);
        var mark = Assert.Single(JsonDocument.Parse(fields["marks"]).RootElement.EnumerateArray());
        Assert.Equal("worn bush", mark.GetProperty("note").GetString(), StringComparer.Ordinal);
        Assert.Equal(0.25, mark.GetProperty("fromX").GetDouble(), 0.01);
        Assert.Equal(0.5, mark.GetProperty("toY").GetDouble(), 0.01);
        Assert.Equal((2400, 1200), JpegSize(_host.Photographs[key]));
        await Expect(Page.Locator(".marks")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_photograph_loses_where_it_was_taken()
    {
        var jpeg = await PictureAsync(800, 600, "image/jpeg");
        byte[] exif = [0xFF, 0xE1, 0x00, 0x18, .. "Exif\0\0II*\0\u0008\0\0\0"u8, .. "GPS 53.9 -0.4"u8[..8]];
        byte[] tagged = [jpeg[0], jpeg[1], .. exif, .. jpeg[2..]];
        await Page.Locator("#photo").SetInputFilesAsync(new FilePayload { Name = "a.jpg", MimeType = "image/jpeg", Buffer = tagged });
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep the photograph" }).ClickAsync();
        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["photo"]);

        var kept = Assert.Single(_host.Photographs).Value;

        Assert.True(tagged.AsSpan().IndexOf("Exif"u8) > 0);
        Assert.Equal(-1, kept.AsSpan().IndexOf("Exif"u8));
        Assert.Equal((800, 600), JpegSize(kept));
    }

    [Fact]
    public async Task What_cannot_be_read_here_goes_as_it_is()
    {
        byte[] odd = [.. "ftypheic and no more"u8];
        await Page.Locator("#photo").SetInputFilesAsync(new FilePayload { Name = "odd.heic", MimeType = "image/heic", Buffer = odd });
        await Expect(Page.Locator(".photo-said")).ToContainTextAsync("It is kept as it is.");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep the photograph" }).ClickAsync();
        await Expect(Page.Locator("#readings li")).ToHaveTextAsync(["photo"]);

        Assert.Equal(odd, Assert.Single(_host.Photographs).Value);
    }

    private ILocator Key(string name) => Page.Locator($".keypad [data-key='{name}']");

    private Task DownAsync(string by) => by is "mouse" ? Page.Mouse.DownAsync() : Page.Keyboard.DownAsync(by);

    private Task UpAsync(string by) => by is "mouse" ? Page.Mouse.UpAsync() : Page.Keyboard.UpAsync(by);

    private async Task HasNoBarrierAsync()
    {
        var result = await Page.RunAxe(new AxeRunOptions { RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] } });
        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join(", ", v.Nodes.Select(n => n.Html))})"));
    }

    private async Task<byte[]> PictureAsync(int width, int height, string type = "image/png")
    {
        var data = await Page.EvaluateAsync<string>(
            "([w, h, type]) => { const c = document.createElement('canvas'); c.width = w; c.height = h; c.getContext('2d').fillRect(0, 0, w / 2, h); return c.toDataURL(type); }",
            new object[] { width, height, type });
        return Convert.FromBase64String(data[(data.IndexOf(',', StringComparison.Ordinal) + 1)..]);
    }

    // Start of frame (ITU-T T.81, B.2.2): length, precision, then lines and samples a line.
    private static (int Width, int Height) JpegSize(byte[] jpeg)
    {
        Assert.Equal<byte>([0xFF, 0xD8], jpeg[..2]);
        for (var at = 2; at < jpeg.Length - 9;)
        {
            if (jpeg[at + 1] is 0xC0 or 0xC1 or 0xC2)
            {
                return ((jpeg[at + 7] << 8) | jpeg[at + 8], (jpeg[at + 5] << 8) | jpeg[at + 6]);
            }

            at += 2 + ((jpeg[at + 2] << 8) | jpeg[at + 3]);
        }

        throw new InvalidDataException("No frame in the picture.");
    }
}
