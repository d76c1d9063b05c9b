using System.Net;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests.Mixture;

public sealed class BenchPagesTests
{
    [Fact]
    public async Task The_working_is_of_the_place_in_the_address()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/cars/tern-2800/mixture?barrel=2&rpm=2750&throttle=11");

        Assert.Equal("2,750\u202Frpm, 11° of throttle", page.GetElementById("point-heading")!.TextContent);
        Assert.NotEmpty(page.QuerySelectorAll(".working li"));
        Assert.Matches(@"^\d\.\d\d$", page.QuerySelector("[data-figure=fitted]")!.TextContent);
        Assert.Equal("2", page.QuerySelector(".barrels [aria-current]")!.TextContent.Trim());
        Assert.Equal(2, page.QuerySelectorAll("#map svg[data-plot-left]").Length);
    }

    [Fact]
    public async Task A_fragment_is_the_work_of_the_page_without_its_frame()
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/cars/tern-2800/mixture?rpm=2750&throttle=11");
        request.Headers.Add("X-Tickover-Fragment", "work");

        using var answer = await app.SendAsync(request);
        var html = await answer.Content.ReadAsStringAsync();

        Assert.StartsWith("<div class=\"bench", html.TrimStart(), StringComparison.Ordinal);
        Assert.DoesNotContain("<html", html, StringComparison.Ordinal);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.Contains("X-Tickover-Fragment", answer.Headers.Vary, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("rpm=0")]
    [InlineData("throttle=-5")]
    [InlineData("rpm=60000")]
    [InlineData("rpm=NaN")]
    [InlineData("barrel=99")]
    public async Task A_place_that_is_none_is_refused_in_words(string query)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync($"/cars/tern-2800/mixture?{query}", HttpStatusCode.BadRequest);

        Assert.Contains("cannot be looked up", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rpm=20000&throttle=90")]
    [InlineData("rpm=100&throttle=0")]
    [InlineData("rpm=6000&throttle=0")]
    public async Task The_ends_of_the_range_give_figures_or_say_why_not_and_never_NaN(string query)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync($"/cars/tern-2800/mixture?{query}");

        Assert.DoesNotContain("NaN", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", page.Body.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("idleJet", "57")]
    [InlineData("mainJet", "152")]
    [InlineData("airCorrector", "192")]
    public async Task A_jet_on_trial_shows_both_maps_and_their_difference(string part, string value)
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/cars/osprey-v8/jets?part={part}&value={value}");
        request.Headers.Add("X-Tickover-Fragment", "wide");

        using var answer = await app.SendAsync(request);
        var fragment = await TestApp.ParseAsync(answer);

        var maps = fragment.QuerySelectorAll(".pair svg.mixture-picture");
        Assert.Equal(2, maps.Length);
        Assert.NotEqual(maps[0].InnerHtml, maps[1].InnerHtml, StringComparer.Ordinal);
        Assert.NotNull(fragment.QuerySelector("svg.difference-picture"));
        Assert.NotNull(fragment.QuerySelector(".effect"));
    }

    [Fact]
    public async Task Fitting_writes_the_document_and_keeping_leaves_it()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");
        const string trial = "/cars/osprey-v8/jets?barrel=1&rpm=2750&throttle=11&part=idleJet&value=57";

        var fitted = FigureText.Show(CarDocument.Read(app.Document("osprey-v8")).Car!.Barrels[0].Figures["barrel.idleJet"]!);
        var page = await app.PageAsync(trial);
        Assert.Contains(page.QuerySelectorAll(".decide a"), a => a.TextContent.Contains($"Keep {fitted}", StringComparison.Ordinal));
        Assert.Equal(Repository.Sample("osprey-v8"), app.Document("osprey-v8"));
        using var answer = await app.PostFormAsync(trial, "/cars/osprey-v8/fit?barrel=1&rpm=2750&throttle=11&part=idleJet&value=57");

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.All(CarDocument.Read(app.Document("osprey-v8")).Car!.Barrels, b => Assert.Equal(57e-5, b.Figures.Si("barrel.idleJet"), 9));
    }

    [Fact]
    public async Task A_trial_size_that_cannot_be_used_says_why_and_keeps_what_was_typed()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/cars/osprey-v8/jets?part=choke&value=99+mm", HttpStatusCode.UnprocessableEntity);

        Assert.NotEmpty(page.QuerySelectorAll("[role=alert] .faults li"));
        Assert.Equal("99 mm", page.QuerySelector("input[name=value]")!.GetAttribute("value"));
        Assert.Null(page.QuerySelector(".decide"));
    }

    [Fact]
    public async Task A_trial_for_one_barrel_changes_that_one_on_fitting()
    {
        await using var app = await TestApp.LookAsync();
        const string query = "?barrel=3&rpm=2750&throttle=11&part=mainJet&value=152&for=one";

        using var answer = await app.PostFormAsync($"/cars/osprey-v8/jets{query}", $"/cars/osprey-v8/fit{query}");

        var car = CarDocument.Read(app.Document("osprey-v8")).Car!;
        Assert.Equal([3], car.Barrels.Where(b => Math.Abs(b.Figures.Si("barrel.mainJet") - 152e-5) < 1e-9).Select(b => b.Number));
    }
}
