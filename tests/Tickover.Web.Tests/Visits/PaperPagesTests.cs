using System.Net;
using AngleSharp.Html.Dom;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Visits;

/// <summary>First run, taking in, brief, papers, journal, history, search and the workshop, as a browser without script uses them.</summary>
public sealed class PaperPagesTests
{
    private static readonly (string, string)[] Own =
        [("name", "Quay Works"), ("currency", "EUR"), ("country", "IE"), ("personName", "Ana Reed"), ("initials", "ar"), ("pin", "4711")];

    [Fact]
    public async Task An_empty_record_begins_with_ones_own_workshop_and_its_first_person()
    {
        await using var app = await TestApp.StartAsync();
        using var refused = await app.PostFormAsync("/begin", "/begin", [.. Own.Where(f => f.Item1 is not ("pin" or "currency")), ("pin", "12"), ("currency", "pounds")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var again = await TestApp.ParseAsync(refused);
        Assert.Equal("Quay Works", ((IHtmlInputElement)again.QuerySelector("#name")!).Value);
        Assert.Contains("ISO 4217", again.QuerySelector("#currency-about")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("4 to 8 digits", again.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("12\"", again.QuerySelector("#begin-pin")!.OuterHtml.Replace("maxlength", "", StringComparison.Ordinal), StringComparison.Ordinal);

        using var kept = await app.PostFormAsync("/begin", "/begin", Own);
        Assert.Equal(HttpStatusCode.Found, kept.StatusCode);
        var workshop = await app.Record.WorkshopAsync();
        Assert.Equal(("Quay Works", "IE", "EUR"), (workshop.House.Name, workshop.House.Country, workshop.House.Currency));
        Assert.Equal("AR", Assert.Single(workshop.People).Initials);
        Assert.DoesNotContain("4711", await Journal(app), StringComparison.Ordinal);
        using var begun = await app.GetAsync("/begin");
        Assert.Equal("/workshop", begun.Headers.Location!.ToString());
    }

    [Fact]
    public async Task The_demonstration_comes_and_goes_by_one_tap_and_comes_back_by_one()
    {
        await using var app = await TestApp.StartAsync();
        using var loaded = await app.PostFormAsync("/begin", "/begin/demonstration");
        Assert.Equal("/", loaded.Headers.Location!.ToString());
        Assert.Contains("Larkfield", (await app.PageAsync("/")).Body!.TextContent, StringComparison.Ordinal);

        using var off = await app.PostFormAsync("/demonstration", "/demonstration/remove");
        Assert.Equal("/demonstration", off.Headers.Location!.ToString());
        var empty = await app.Record.WorkshopAsync();
        Assert.Equal("", empty.House.Name);
        Assert.All(empty.People, p => Assert.True(p.Removed));
        Assert.Empty(await app.Record.OpenVisitsAsync());
        Assert.Contains("Nothing in the record holds", (await app.PageAsync("/find?q=Larkfield")).Body!.TextContent, StringComparison.Ordinal);

        using var back = await app.PostFormAsync("/demonstration", "/undo");
        Assert.Equal(HttpStatusCode.Found, back.StatusCode);
        Assert.True((await app.Record.WorkshopAsync()).House.Demonstration);
        Assert.NotEmpty(await app.Record.OpenVisitsAsync());
    }

    [Fact]
    public async Task A_car_is_taken_in_with_its_owner_and_brief_in_one_act()
    {
        await using var app = await TestApp.StartAsync();
        var visit = await TakeInAsync(app);
        var record = (await app.Record.VisitAsync(visit))!;
        Assert.Equal(("<b>Stutters</b>", 1200.5m, 1500m), (record.Visit.Complaint, record.Visit.Estimate, record.Visit.StopAndAsk));
        Assert.Equal("Mrs O. Wren", record.Owner!.Name);
        Assert.Equal(("Marram Six", record.Owner.Id), (record.Car.Name, record.Car.Owner!.Value));
        Assert.Single(await app.Record.JournalAsync(visit, 10));

        var found = await app.PageAsync("/visits/new?q=ab12");
        Assert.Contains("Marram Six", found.QuerySelector(".known-car")!.TextContent, StringComparison.Ordinal);
        var page = await app.PageAsync($"/visits/new?car={record.Car.Id}");
        Assert.Null(page.QuerySelector("#carName"));
        using var unknown = await app.GetAsync($"/visits/new?car={Guid.NewGuid()}");
        Assert.Equal(HttpStatusCode.NotFound, unknown.StatusCode);
    }

    [Fact]
    public async Task What_is_wrong_with_a_brief_is_told_beside_the_field_and_nothing_typed_is_lost()
    {
        await using var app = await TestApp.StartAsync();
        using var refused = await app.PostFormAsync(
            "/visits/new", "/visits/new", ("carName", "Tern"), ("complaint", "Hunts"), ("estimate", "lots"), ("odometerIn", "-4"), ("year", "1492"), ("ownerEmail", "nowhere"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var page = await TestApp.ParseAsync(refused);
        Assert.Equal(("Tern", "lots"), (((IHtmlInputElement)page.QuerySelector("#carName")!).Value, ((IHtmlInputElement)page.QuerySelector("#estimate")!).Value));
        Assert.Equal("Hunts", page.QuerySelector("#complaint")!.TextContent);
        foreach (var field in new[] { "estimate", "odometerIn", "year", "ownerName", "ownerEmail" })
        {
            Assert.Equal("true", page.QuerySelector($"#{field}")!.GetAttribute("aria-invalid"));
            Assert.NotEmpty(page.QuerySelector($"#{field}-about")!.TextContent);
        }

        Assert.Empty(await app.Record.AllAsync<CustomerCar>());
    }

    [Fact]
    public async Task The_brief_is_edited_and_a_clash_is_told()
    {
        await using var app = await TestApp.StartAsync();
        var visit = await TakeInAsync(app);
        var brief = $"/visits/{visit}/brief";
        using var kept = await app.PostFormAsync(brief, brief, ("waitingFor", "hose from Greta"), ("waitingUntil", "2030-01-02T16:30"), ("ownerTelephone", "01632 960111"), ("odometerOut", "45210"));
        Assert.Equal(HttpStatusCode.Found, kept.StatusCode);
        var record = (await app.Record.VisitAsync(visit))!;
        Assert.Equal(("hose from Greta", 45210, "01632 960111"), (record.Visit.WaitingFor, record.Visit.OdometerOut, record.Owner!.Telephone));

        // Another tablet changes the same field between showing and keeping.
        var stale = record.Visit.Version - 1;
        using var clash = await app.PostFormAsync(brief, brief, ("waitingFor", "nothing"), ("version", $"{stale}"));
        Assert.Equal(HttpStatusCode.Conflict, clash.StatusCode);
        var told = (await TestApp.ParseAsync(clash)).Body!.TextContent;
        Assert.Contains("hose from Greta", told, StringComparison.Ordinal);
        Assert.Equal("hose from Greta", (await app.Record.VisitAsync(visit))!.Visit.WaitingFor);
    }

    [Fact]
    public async Task Parts_time_questions_and_components_are_added_summed_edited_and_taken_off()
    {
        await using var app = await TestApp.StartAsync();
        var visit = await TakeInAsync(app);
        var papers = $"/visits/{visit}/papers";
        var at = $"/visits/{visit}";
        using var part = await app.PostFormAsync(papers, $"{at}/parts", ("what", "Hose <8 mm>"), ("price", "1600,50"), ("reference", "R9"));
        using var time = await app.PostFormAsync(papers, $"{at}/times", ("hours", "9"), ("minutes", "30"), ("what", "tanks out"));
        using var question = await app.PostFormAsync(papers, $"{at}/approvals", ("asked", "New tank?"), ("price", "400"));
        using var component = await app.PostFormAsync(papers, $"{at}/components", ("what", "Front carburettor"), ("serialNumber", "0042"));
        Assert.All(new[] { part, time, question, component }, a => Assert.Equal(HttpStatusCode.Found, a.StatusCode));

        var page = await app.PageAsync(papers);
        Assert.Contains("Hose <8 mm>", page.QuerySelector("#parts")!.TextContent, StringComparison.Ordinal);
        var sums = page.QuerySelector("section[aria-labelledby=sums]")!.TextContent;
        Assert.Contains("100.50 beyond the GBP 1,500.00 agreed", sums, StringComparison.Ordinal);
        Assert.Contains("9 h 30 min, 1 h 30 min more than the 8 h estimated", sums, StringComparison.Ordinal);
        Assert.Contains("1 without an answer", page.QuerySelector("#approvals")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("0042", page.QuerySelector("#components")!.TextContent, StringComparison.Ordinal);

        var line = Assert.Single((await app.Record.VisitAsync(visit))!.Parts);
        using var bad = await app.PostFormAsync(papers, $"{at}/parts", ("what", "Hose"), ("price", "dear"), ("id", $"{line.Id}"), ("version", $"{line.Version}"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, bad.StatusCode);
        var told = await TestApp.ParseAsync(bad);
        Assert.Contains("dear", told.QuerySelector($"#part-{line.Id}-price-about")!.TextContent, StringComparison.Ordinal);
        using var none = await app.PostFormAsync(papers, $"{at}/times", ("hours", "0"), ("minutes", "0"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, none.StatusCode);
        using var off = await app.PostFormAsync(papers, $"{at}/parts/remove");
        Assert.Equal(HttpStatusCode.Found, off.StatusCode);
        Assert.Empty((await app.Record.VisitAsync(visit))!.Parts);
    }

    [Fact]
    public async Task The_journal_says_before_and_after_in_words_and_brings_back_what_was_taken_off()
    {
        await using var app = await TestApp.StartAsync();
        var visit = await TakeInAsync(app);
        var papers = $"/visits/{visit}/papers";
        using var part = await app.PostFormAsync(papers, $"/visits/{visit}/parts", ("what", "Filter"));
        using var off = await app.PostFormAsync(papers, $"/visits/{visit}/parts/remove");

        var journal = await app.PageAsync($"/visits/{visit}/journal");
        var text = journal.Body!.TextContent;
        Assert.Contains("Part, taken off", text, StringComparison.Ordinal);
        Assert.Contains("Estimate hours", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\"what\":", text, StringComparison.Ordinal);
        using var back = await app.PostFormAsync($"/visits/{visit}/journal", $"/visits/{visit}/bring-back");
        Assert.Equal(HttpStatusCode.Found, back.StatusCode);
        Assert.Equal("Filter", Assert.Single((await app.Record.VisitAsync(visit))!.Parts).What);

        using var undone = await app.PostFormAsync($"/visits/{visit}/journal", $"/visits/{visit}/undo");
        Assert.Empty((await app.Record.VisitAsync(visit))!.Parts);
        using var redone = await app.PostFormAsync($"/visits/{visit}/journal", $"/visits/{visit}/redo");
        Assert.Single((await app.Record.VisitAsync(visit))!.Parts);
    }

    [Fact]
    public async Task A_cars_history_shows_its_visits_descriptions_and_what_moved()
    {
        await using var app = await TestApp.StartAsync();
        using var loaded = await app.PostFormAsync("/begin", "/begin/demonstration");
        var page = await app.PageAsync("/cars/larkfield-tern-2800/history");
        Assert.Contains("Mrs J. Teal", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.True(page.QuerySelectorAll(".years > li").Length > 1);
        Assert.NotEmpty(page.QuerySelectorAll(".drift svg"));
        var description = page.QuerySelectorAll("a").First(a => a.GetAttribute("href")!.StartsWith("/cars/larkfield-tern-2800/descriptions/", StringComparison.Ordinal));
        Assert.Contains("\"name\"", (await app.PageAsync(description.GetAttribute("href")!)).QuerySelector("pre")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("No description held", (await app.PageAsync("/cars/larkfield-tern-2800/history?on=1990-01-01")).QuerySelector("#on")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_groups_by_car_and_says_when_nothing_is_found()
    {
        await using var app = await TestApp.StartAsync();
        var visit = await TakeInAsync(app);
        var page = await app.PageAsync("/find?q=stutters");
        Assert.Contains("Marram Six", page.QuerySelector("h2")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(page.QuerySelectorAll(".hits a"), a => string.Equals(a.GetAttribute("href"), $"/visits/{visit}", StringComparison.Ordinal));
        Assert.Empty(page.QuerySelectorAll(".hits b b"));
        Assert.Contains("Nothing in the record holds “<zeppelin>”", (await app.PageAsync("/find?q=%3Czeppelin%3E")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await app.PageAsync("/find")).QuerySelectorAll(".hits"));
    }

    [Fact]
    public async Task The_workshop_keeps_house_people_instruments_and_authorities()
    {
        await using var app = await TestApp.StartAsync();
        using var begun = await app.PostFormAsync("/begin", "/begin", Own);
        using var house = await app.PostFormAsync("/workshop", "/workshop", ("guarantee", "Twelve months."), ("currency", "EUR"));
        Assert.Equal(HttpStatusCode.Found, house.StatusCode);
        using var unreadable = await app.PostFormAsync("/workshop/instruments", "/workshop/instruments", ("name", "Meter"), ("goodTo", "rather good"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, unreadable.StatusCode);
        using var instrument = await app.PostFormAsync("/workshop/instruments", "/workshop/instruments", ("name", "Meter"), ("goodTo", "±0.25 kg/h"), ("dueOn", "2020-05-01"));
        Assert.Equal(HttpStatusCode.Found, instrument.StatusCode);
        using var taken = await app.PostFormAsync("/workshop/people", "/workshop/people", ("personName", "Al Rook"), ("initials", "AR"), ("version", "0"), ("id", $"{Guid.NewGuid()}"));
        Assert.Contains("initials of Ana Reed", (await TestApp.ParseAsync(taken)).Body!.TextContent, StringComparison.Ordinal);
        using var own = await app.PostFormAsync("/workshop/authorities", "/workshop/authorities", ("hot-work", "Ask the fire officer"));
        Assert.Equal(HttpStatusCode.Found, own.StatusCode);

        var workshop = await app.Record.WorkshopAsync();
        Assert.Equal(("Twelve months.", "Ask the fire officer"), (workshop.House.Guarantee, workshop.House.OwnAuthorities["hot-work"]));
        Assert.Equal("±0.25 kg/h", Assert.Single(workshop.Instruments).GoodTo);
        Assert.Contains("AR", (await app.PageAsync("/workshop")).QuerySelector("form.who")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_PIN_is_changed_only_with_the_one_before_and_is_shown_nowhere()
    {
        await using var app = await TestApp.StartAsync();
        using var begun = await app.PostFormAsync("/begin", "/begin", Own);
        using var wrong = await app.PostFormAsync("/workshop/people", "/workshop/people/pin", ("current", "0000"), ("pin", "8642"), ("again", "8642"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        using var unlike = await app.PostFormAsync("/workshop/people", "/workshop/people/pin", ("current", "4711"), ("pin", "8642"), ("again", "8643"));
        Assert.DoesNotContain("8642", await unlike.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var right = await app.PostFormAsync("/workshop/people", "/workshop/people/pin", ("current", "4711"), ("pin", "8642"), ("again", "8642"));
        Assert.Equal(HttpStatusCode.Found, right.StatusCode);
        Assert.DoesNotContain("8642", await Journal(app), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/visits/6f9619ff8b86d011b42d00cf4fc964ff/brief")]
    [InlineData("/visits/nothing/papers")]
    [InlineData("/visits/nothing/journal")]
    [InlineData("/cars/no-such-car/history")]
    [InlineData("/cars/no-such-car/descriptions/1")]
    public async Task What_is_not_there_is_said_so(string address)
    {
        await using var app = await TestApp.StartAsync();
        using var answer = await app.GetAsync(address);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task<Id<Visit>> TakeInAsync(TestApp app)
    {
        using var answer = await app.PostFormAsync(
            "/visits/new",
            "/visits/new",
            ("carName", "Marram Six"),
            ("registration", "AB 12"),
            ("ownerName", "Mrs O. Wren"),
            ("complaint", "<b>Stutters</b>"),
            ("estimate", "1200,5"),
            ("estimateHours", "8"),
            ("stopAndAsk", "1500"));
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        return Id.Read<Visit>(answer.Headers.Location!.ToString().Split('/')[^1])!.Value;
    }

    private static async Task<string> Journal(TestApp app) =>
        string.Join("\n", (await app.Record.JournalAsync(null, 1000)).SelectMany(l => l.Changes.Select(c => c.After).Append(l.Words)));
}
