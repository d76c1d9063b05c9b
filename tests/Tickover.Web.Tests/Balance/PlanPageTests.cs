using System.Net;

namespace Tickover.Web.Tests.Balance;

/// <summary>A car that no car document describes gets a plan of its engine on the visit, and its rounds are read by it.</summary>
public sealed class PlanPageTests
{
    private static readonly (string Name, string Value)[] TwoCarburettors =
    [
        ("built", "true"), ("name", "Brackwater Dunlin"), ("layout", "constant depression"), ("cylinders", "4"), ("carburettors", "2"), ("barrels", "1"),
        ("sweptVolume", "450"), ("throttleBore", "38"), ("closedAngle", "7"), ("idleSpeed", "800"),
    ];

    [Fact]
    public async Task A_car_without_a_description_is_asked_for_its_plan_and_then_read()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app, sample: null);
        var sheet = $"/visits/{rounds.Visit}/worksheets/plan";
        using var sent = await app.GetAsync(rounds.Here);
        Assert.Equal((HttpStatusCode.Found, sheet), (sent.StatusCode, sent.Headers.Location!.OriginalString));

        using var kept = await app.PostFormAsync(sheet, sheet, TwoCarburettors);

        Assert.Equal((HttpStatusCode.Found, rounds.Here), (kept.StatusCode, kept.Headers.Location!.OriginalString));
        var page = await app.PageAsync(rounds.Here);
        Assert.Equal(["barrel:1", "barrel:2"], page.QuerySelectorAll("#engine a[data-part^='barrel:']").Select(a => a.GetAttribute("data-part")!).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        await rounds.ReadAsync(null, 9.1, 8.2, 9.1);
        Assert.Equal(["1", "2", "1"], (await rounds.LookAsync()).Readings.Select(r => r.Place.Name), StringComparer.Ordinal);
        Assert.Contains("Mean 8.7", (await app.PageAsync($"{rounds.Here}?read=idleAirflow")).QuerySelector("#engine")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sample_is_kept_and_its_document_can_be_read_on_the_page()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app, sample: null);
        var sheet = $"/visits/{rounds.Visit}/worksheets/plan";

        using var kept = await app.PostFormAsync(sheet, sheet, ("sample", "dunlin.plan.json"));

        Assert.Equal("Brackwater Dunlin", Assert.Single((await rounds.LookAsync()).Worksheets).Name);
        Assert.Contains("tickover-plan-1", (await app.PageAsync(sheet)).QuerySelector("pre")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_with_a_plan_is_said_and_nothing_is_kept()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app, sample: null);
        var sheet = $"/visits/{rounds.Visit}/worksheets/plan";

        using var refused = await app.PostFormAsync(sheet, sheet, [.. TwoCarburettors.Where(f => !string.Equals(f.Name, "throttleBore", StringComparison.Ordinal)), ("throttleBore", "3800")]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var page = await TestApp.ParseAsync(refused);
        Assert.Contains("throttleBore: 3800 is not from 15 to 80 mm", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("3800", page.QuerySelector("#document")!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await rounds.LookAsync()).Worksheets);
    }
}
