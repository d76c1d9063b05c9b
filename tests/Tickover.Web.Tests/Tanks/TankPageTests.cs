using System.Net;
using Tickover.Web.Tests.Balance;

namespace Tickover.Web.Tests.Tanks;

public sealed class TankPageTests
{
    [Fact]
    public async Task The_samples_are_at_hand_without_a_visit()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/tanks");

        Assert.Contains("/tanks/tern", page.QuerySelectorAll(".sample a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
    }

    [Fact]
    public async Task Tanks_are_drawn_with_their_fuel_sliders_that_work_as_a_form_and_their_table()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/tanks/tern?litres=20&nose=-10&left=12");

        var said = page.QuerySelector("svg.tank-picture")!.GetAttribute("aria-label")!;
        Assert.StartsWith("20 l in all: left ", said, StringComparison.Ordinal);
        Assert.Contains("The nose is down 10 %, the left side up 12 %.", said, StringComparison.Ordinal);
        var form = page.QuerySelector("form[data-follow]")!;
        Assert.Equal(("get", "/tanks/tern"), (form.GetAttribute("method"), form.GetAttribute("action")));
        Assert.Equal(["20", "-10", "12"], form.QuerySelectorAll("input[type=range]").Select(i => i.GetAttribute("value")!), StringComparer.Ordinal);
        Assert.Contains("Strapping table", page.QuerySelector("caption")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("vapour", page.QuerySelector(".sev-unsafe + p")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_script_gets_the_drawing_alone()
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/tanks/gannet?litres=12");
        request.Headers.Add("X-Tickover-Fragment", "drawing");

        using var answer = await app.SendAsync(request);
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Contains("12 l in all", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<html", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_visit_without_tanks_asks_for_them_and_then_shows_what_was_kept()
    {
        await using var app = await TestApp.StartAsync();
        var visit = (await Rounds.BeginAsync(app, sample: null)).Visit;
        var (here, sheet) = ($"/visits/{visit}/storage/tanks", $"/visits/{visit}/worksheets/tank");
        using var sent = await app.GetAsync(here);
        Assert.Equal((HttpStatusCode.Found, sheet), (sent.StatusCode, sent.Headers.Location!.OriginalString));
        Assert.Contains(sheet, (await app.PageAsync($"/visits/{visit}/storage")).QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);

        using var kept = await app.PostFormAsync(sheet, sheet, ("sample", "tern.tank.json"));

        Assert.Equal((HttpStatusCode.Found, here), (kept.StatusCode, kept.Headers.Location!.OriginalString));
        var page = await app.PageAsync(here);
        Assert.Equal("Larkfield Tern 2800, saddle tanks", page.QuerySelector("h1")!.TextContent);
        Assert.Contains(sheet, page.QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
        Assert.Contains(here, (await app.PageAsync($"/visits/{visit}/storage")).QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_sender_alone_is_judged_without_a_picture()
    {
        await using var app = await TestApp.StartAsync();
        var visit = (await Rounds.BeginAsync(app, sample: null)).Visit;
        var sheet = $"/visits/{visit}/worksheets/tank";
        const string Sender = """{ "format": "tickover-tank-1", "name": "Dunlin", "capacity": 50, "readings": [{ "litres": 5, "ohms": "open" }] }""";

        using var kept = await app.PostFormAsync(sheet, sheet, ("document", Sender));
        var page = await app.PageAsync(kept.Headers.Location!.OriginalString);

        Assert.Null(page.QuerySelector("svg.tank-picture"));
        Assert.Contains("open", page.QuerySelector(".right")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/tanks/nothing", HttpStatusCode.NotFound)]
    [InlineData("/tanks/tern?litres=500", HttpStatusCode.BadRequest)]
    [InlineData("/tanks/tern?nose=NaN", HttpStatusCode.BadRequest)]
    [InlineData("/tanks/tern?left=steep", HttpStatusCode.BadRequest)]
    public async Task What_is_not_there_is_said(string address, HttpStatusCode status)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync(address, status);

        Assert.NotNull(page.QuerySelector("h1"));
    }
}
