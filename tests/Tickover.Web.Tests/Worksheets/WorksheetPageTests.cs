using System.Net;
using Tickover.Web.Tests.Balance;

namespace Tickover.Web.Tests.Worksheets;

/// <summary>What was measured for a computation is kept on the visit, judged on its page and on its stage.</summary>
public sealed class WorksheetPageTests
{
    [Theory]
    [InlineData("jets", "gannet.jets.json", "strip-down", "jets are not what they say")]
    [InlineData("wear", "tern.wear.json", "strip-down", "things must not stay as they are")]
    [InlineData("level", "tern.level.json", "build", "Levels are not equal")]
    [InlineData("build", "tern.build.json", "build", "Set the rods to one length first")]
    [InlineData("wall", "tern.wall.json", "storage", "a patch over one place is refused")]
    [InlineData("leak", "gannet.leak.json", "storage", "No leak seen")]
    public async Task A_sample_is_kept_and_judged_on_its_page_and_on_its_stage(string key, string sample, string stage, string said)
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var sheet = $"/visits/{rounds.Visit}/worksheets/{key}";

        using var kept = await app.PostFormAsync(sheet, sheet, ("sample", sample));

        Assert.Equal((HttpStatusCode.Found, sheet), (kept.StatusCode, kept.Headers.Location!.OriginalString));
        Assert.Contains(said, (await app.PageAsync(sheet)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains(said, (await app.PageAsync($"/visits/{rounds.Visit}/{stage}")).QuerySelector(".sheets")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wall", "tern.wall.json", "/walls/")]
    [InlineData("leak", "tern.leak.json", "/leaks/")]
    [InlineData("gauge", "tern.gauge.json", "/gauges/")]
    [InlineData("level", "tern.level.json", "/levels/")]
    [InlineData("wear", "tern.wear.json", "/wear/")]
    public async Task A_kept_sheet_opens_drawn(string key, string sample, string where)
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var sheet = $"/visits/{rounds.Visit}/worksheets/{key}";
        using var kept = await app.PostFormAsync(sheet, sheet, ("sample", sample));

        using var opened = await app.GetAsync((await app.PageAsync(sheet)).QuerySelector($"a[href^='{sheet}/']")!.GetAttribute("href")!);

        Assert.Equal(HttpStatusCode.Found, opened.StatusCode);
        Assert.StartsWith(where, opened.Headers.Location!.OriginalString, StringComparison.Ordinal);
        Assert.NotNull((await app.PageAsync(opened.Headers.Location.OriginalString)).QuerySelector("svg"));
    }

    [Fact]
    public async Task What_cannot_be_read_is_said_and_the_text_stays()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var sheet = $"/visits/{rounds.Visit}/worksheets/jets";

        using var refused = await app.PostFormAsync(sheet, sheet, ("document", """{ "format": "tickover-jets-1", "jets": [] }"""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var page = await TestApp.ParseAsync(refused);
        Assert.Contains("jets: No jet is written", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("tickover-jets-1", page.QuerySelector("#document")!.TextContent, StringComparison.Ordinal);
        using var empty = await app.PostFormAsync(sheet, sheet, ("document", ""));
        Assert.Contains("Choose a file", (await TestApp.ParseAsync(empty)).QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await rounds.LookAsync()).Worksheets);
    }
}
