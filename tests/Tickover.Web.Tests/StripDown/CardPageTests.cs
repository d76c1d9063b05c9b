using System.Net;
using Tickover.Web.Tests.Balance;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.StripDown;

/// <summary>A set of carburettors is recorded on cards and judged on the drawing.</summary>
public sealed class CardPageTests
{
    [Fact]
    public async Task A_card_is_kept_in_one_go_and_the_set_says_which_jet_is_the_odd_one()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var strip = $"/visits/{rounds.Visit}/strip-down";
        foreach (var (card, first, second) in new[] { (1, "50", "50"), (2, "55", "50"), (3, "50", "50") })
        {
            var address = $"{strip}/cards/{card}";
            using var kept = await app.PostFormAsync(address, address, ($"v:idleJet:barrel:{(2 * card) - 1}", first), ($"v:idleJet:barrel:{2 * card}", second), ($"v:floatMass:carburettor:{card}", "24.1"));
            Assert.Equal(HttpStatusCode.Found, kept.StatusCode);
        }

        Assert.Equal(9, (await rounds.LookAsync()).Readings.Count(r => r.Moment == Moment.AsFound && r.Stage == Stage.StripDown));
        var set = await app.PageAsync($"{strip}/set");
        Assert.Contains("One thing differs", set.QuerySelector("#set")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("55", set.QuerySelector("#idleJet .chip-odd")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("50, one 55", set.QuerySelector("svg.section-picture")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Idle jet 55 in barrel 3; 50 in the others", (await app.PageAsync($"{strip}/cards/2")).QuerySelector(".card.marked")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("One thing differs", (await app.PageAsync(strip)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_what_was_changed_on_the_card_is_kept_again()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var card = $"/visits/{rounds.Visit}/strip-down/cards/1";
        using var first = await app.PostFormAsync(card, card, ("v:mainJet:barrel:1", "135"), ("v:mainJet:barrel:2", "135"));

        using var again = await app.PostFormAsync(card, card, ("v:mainJet:barrel:1", "135"), ("was:mainJet:barrel:1", "135"), ("v:mainJet:barrel:2", "140"), ("was:mainJet:barrel:2", "135"));

        Assert.Equal("135, 135, 140", string.Join(", ", (await rounds.LookAsync()).Readings.Select(r => r.Typed)));
        using var nothing = await app.PostFormAsync(card, card, ("v:mainJet:barrel:1", "135"), ("was:mainJet:barrel:1", "135"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, nothing.StatusCode);
        Assert.Contains("Nothing on the card was changed", (await TestApp.ParseAsync(nothing)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("v:mainJet:barrel:1", "big", "Main jet, barrel 1")]
    [InlineData("v:mainJet:barrel:1", "1350", "right as typed")]
    public async Task What_cannot_be_kept_is_said_and_nothing_of_the_card_is_kept(string field, string typed, string said)
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var card = $"/visits/{rounds.Visit}/strip-down/cards/1";

        using var refused = await app.PostFormAsync(card, card, (field, typed), ("v:mainJet:barrel:2", "135"), ("sure", "false"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains(said, (await TestApp.ParseAsync(refused)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await rounds.LookAsync()).Readings);
    }

    [Fact]
    public async Task A_carburettor_the_car_has_not_is_no_card()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);

        await app.PageAsync($"/visits/{rounds.Visit}/strip-down/cards/9", HttpStatusCode.NotFound);
    }
}
