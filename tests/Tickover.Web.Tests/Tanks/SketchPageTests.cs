using System.Net;
using Tickover.Web.Tests.Balance;

namespace Tickover.Web.Tests.Tanks;

public sealed class SketchPageTests
{
    private const string Box = "view=side&corners=0_0~500_0~500_250~0_250&depth=300";

    [Fact]
    public async Task The_sheet_draws_what_its_address_says_and_marks_what_is_wrong_where_it_is()
    {
        await using var app = await TestApp.StartAsync();

        Assert.Contains("Set the first corner.", (await app.PageAsync("/tanks/outline")).QuerySelector("#sketch-answer")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("/tanks/outline", (await app.PageAsync("/tanks")).QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
        foreach (var (corners, mark, words) in new[]
        {
            ("0_0~300_250~300_0~0_250", "crosses here", "from corner 1 meets the side from corner 3"),
            ("0_0~300_0_130~300_250_130~0_250", "radius too large", "at corners 2 and 3"),
            ("0_0~300_0~300_0~0_250", "same place", "Corners 2 and 3"),
        })
        {
            var page = await app.PageAsync($"/tanks/outline?corners={corners}&depth=300");

            Assert.Contains(words, page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
            Assert.Contains(page.QuerySelectorAll("svg.sketch text"), t => string.Equals(t.TextContent, mark, StringComparison.Ordinal));
            Assert.Null(page.QuerySelector("#sketch-keep"));
        }

        Assert.Contains("40 l were stated; the sketch holds 2.5 l less (6 %). With a depth of 320 mm both would agree.", await ResultAsync(app, "&stated=40"), StringComparison.Ordinal);
        Assert.Contains("no more than the tape leaves open", await ResultAsync(app, "&stated=37"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_gets_the_address_of_its_sketch_and_the_script_the_work_alone()
    {
        await using var app = await TestApp.StartAsync();
        using var sent = await app.GetAsync("/tanks/outline?view=side&x1=0&y1=0&x2=500&y2=0&x3=500&y3=250&x4=0&y4=250&depth=300&x5=&y5=");
        Assert.Equal((HttpStatusCode.Found, "/tanks/outline?" + Box), (sent.StatusCode, WebUtility.UrlDecode(sent.Headers.Location!.OriginalString)));
        using var request = new HttpRequestMessage(HttpMethod.Get, "/tanks/outline?" + Box);
        request.Headers.Add("X-Tickover-Fragment", "sketch");

        using var answer = await app.SendAsync(request);
        var html = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());

        Assert.DoesNotContain("<html", html, StringComparison.Ordinal);
        Assert.Contains("<b>37.5 l</b> ±0.5 to the brim", html, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"Sheet ruled in millimetres, seen from the side, the front at the right: 4 corners. It holds 37.5 l to the brim.\"", html, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">100</th><td>15.0</td>", html, StringComparison.Ordinal);

        var wrong = await app.PageAsync("/tanks/outline?x1=wide&y1=0&x2=500&y2=0", HttpStatusCode.UnprocessableEntity);
        Assert.Contains("Corner 1, right: \"wide\" is no number.", wrong.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("wide", wrong.QuerySelector("#x1")!.GetAttribute("value"));
    }

    [Fact]
    public async Task On_a_visit_it_is_kept_as_its_tank_worksheet_then_drawn_on_and_put_in_its_own_place()
    {
        await using var app = await TestApp.StartAsync();
        var visit = (await Rounds.BeginAsync(app, sample: null)).Visit;
        var (here, sheet, tanks) = ($"/visits/{visit}/storage/outline", $"/visits/{visit}/worksheets/tank", $"/visits/{visit}/storage/tanks");
        Assert.Contains(here, (await app.PageAsync($"/visits/{visit}/storage")).QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
        Assert.Contains(here, (await app.PageAsync(sheet)).QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);

        await KeepAsync(app, $"{here}?{Box}&name=left", sheet, tanks);
        var again = await app.PageAsync($"{here}?tank=left");
        Assert.Contains("37.5", again.QuerySelector("#sketch-says")!.TextContent, StringComparison.Ordinal);
        await KeepAsync(app, $"{here}?{Box.Replace("300", "400", StringComparison.Ordinal)}&name=left", sheet, tanks);
        await KeepAsync(app, $"{here}?{Box}&name=right&left=-600", sheet, tanks);

        var page = await app.PageAsync(tanks + "?litres=40");
        Assert.StartsWith("40 l in all: left ", page.QuerySelector("svg.tank-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Contains(page.QuerySelectorAll("tbody th"), th => string.Equals(th.TextContent, "87.5", StringComparison.Ordinal));
        Assert.Contains(here, page.QuerySelectorAll("a").Select(a => a.GetAttribute("href")), StringComparer.Ordinal);
        using var nowhere = await app.GetAsync($"{here}?tank=middle");
        Assert.Equal(HttpStatusCode.NotFound, nowhere.StatusCode);
    }

    private static async Task<string> ResultAsync(TestApp app, string more) => (await app.PageAsync($"/tanks/outline?{Box}{more}")).QuerySelector("#sketch-answer")!.TextContent;

    private static async Task KeepAsync(TestApp app, string from, string sheet, string tanks)
    {
        var page = await app.PageAsync(from);
        var form = page.QuerySelector("#sketch-keep form")!;
        Assert.Equal(sheet, form.GetAttribute("action"));
        using var kept = await app.PostFormAsync(from, sheet, ("document", form.QuerySelector("[name=document]")!.GetAttribute("value")!));
        Assert.Equal((HttpStatusCode.Found, tanks), (kept.StatusCode, kept.Headers.Location!.OriginalString));
    }
}
