using System.Net;
using Tickover.Web.Tests.Balance;

namespace Tickover.Web.Tests.FaultFinding;

public sealed class FaultPageTests
{
    [Fact]
    public async Task Every_symptom_of_the_table_can_be_chosen_and_words_find_the_nearest()
    {
        await using var app = await TestApp.LookAsync();

        var all = await app.PageAsync("/faults");
        var found = await app.PageAsync("/faults?choose=1&find=petrol+smell");

        Assert.Equal(65, all.QuerySelectorAll("button.symptom[name=s]").Length);
        Assert.Equal("fuel-smell", found.QuerySelector("button.symptom")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_caution_stands_before_the_question_and_every_answer_and_unsure_is_a_button()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/faults?s=flat-spot-stab");
        var html = page.DocumentElement.OuterHtml;

        Assert.True(html.IndexOf("Put gloves on", StringComparison.Ordinal) is > 0 and var caution && caution < html.IndexOf("How are the squirts?", StringComparison.Ordinal));
        Assert.Equal(
            ["watch-shots:one-weak", "watch-shots:both-weak", "watch-shots:late", "watch-shots:good", "watch-shots:unsure"],
            page.QuerySelectorAll(".answers button[name=a]").Select(b => b.GetAttribute("value")!), StringComparer.Ordinal);
        Assert.Contains("Something that this table does not hold", page.QuerySelector(".ranks")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("1: accelerator pump nozzles", page.QuerySelector("svg.where-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_visit_the_address_carries_the_case_and_undo_leads_back()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/faults?s=flat-spot-stab&out=linkage-slack&a=watch-shots:both-weak");
        var undo = page.QuerySelector("a[aria-label='Undo the last answer']")!.GetAttribute("href")!;
        var back = await app.PageAsync(undo);

        Assert.Equal("/faults?s=flat-spot-stab&out=linkage-slack", undo);
        Assert.Contains("How are the squirts?", back.QuerySelector(".next-test .what")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("watch-shots:both-weak", page.QuerySelector(".answers input[name=a]")!.GetAttribute("value"));
        Assert.Equal("The accelerator pump's diaphragm or plunger is worn", page.QuerySelector(".ranks h3")!.TextContent);
    }

    [Theory]
    [InlineData("/faults?s=flat-spot-stabb", "flat-spot-stab (Flat spot only on a stab)")]
    [InlineData("/faults?s=no-idle&a=swap-idle-jet:perhaps", "is no answer of this table")]
    [InlineData("/faults?s=no-idle&out=gremlin", "is no cause of this table")]
    public async Task What_the_table_does_not_know_is_said(string address, string says)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync(address, HttpStatusCode.BadRequest);

        Assert.Contains(says, page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_case_without_a_way_out_says_so()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/faults?s=oil-rises&out=float-valve-leak&out=pump-diaphragm");

        Assert.Contains("Nothing left to ask", page.QuerySelector(".next-test")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("ruled out too soon", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_a_visit_the_case_is_kept_answer_by_answer_and_the_last_can_be_taken_back()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var faults = $"/visits/{rounds.Visit}/faults";

        using var told = await app.PostFormAsync(faults, faults, ("act", "Symptom"), ("value", "flat-spot-stab"));
        using var answered = await app.PostFormAsync(faults, faults, ("act", "Answer"), ("value", "watch-shots:one-weak"));
        var found = await app.PageAsync(faults);
        using var undone = await app.PostFormAsync(faults, faults, ("act", "Undo"), ("value", ""));
        var again = await app.PageAsync(faults);
        var road = await app.PageAsync($"/visits/{rounds.Visit}/road");

        Assert.Equal((HttpStatusCode.Found, HttpStatusCode.Found, HttpStatusCode.Found), (told.StatusCode, answered.StatusCode, undone.StatusCode));
        Assert.Contains("One accelerator pump nozzle is blocked", found.QuerySelector(".next-test .what")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("How are the squirts?", again.QuerySelector(".next-test .what")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(road.QuerySelectorAll("a"), a => string.Equals(a.GetAttribute("href"), faults, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_new_case_is_begun_and_the_old_one_stays_in_the_record()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var faults = $"/visits/{rounds.Visit}/faults";
        using var told = await app.PostFormAsync(faults, faults, ("act", "Symptom"), ("value", "flat-spot-stab"));

        using var anew = await app.PostFormAsync(faults, faults, ("act", "Anew"), ("value", ""));

        var page = await app.PageAsync(faults);
        Assert.Contains("What is wrong with the car?", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("[role=alert]"));
        Assert.Equal(2, (await rounds.LookAsync()).Worksheets.Count);
    }

    [Fact]
    public async Task The_workshops_own_table_in_the_data_folder_is_used_and_its_slips_are_said()
    {
        await using var app = await TestApp.StartAsync();
        var file = Path.Combine(app.Folder, "faults.json");
        await File.WriteAllTextAsync(file, """
            { "format": "tickover-faults-1", "name": "ours", "version": "1",
              "symptoms": [{ "key": "nest", "group": "Ours", "words": "Smells of mice", "causes": { "aircleaner-restricted": 0.9 }, "origin": "ours", "confidence": "high" }] }
            """);

        var own = await app.PageAsync("/faults?s=nest");
        await File.WriteAllTextAsync(file, "{ \"format\": \"tickover-faults-1\" }");
        File.SetLastWriteTimeUtc(file, new DateTime(2030, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        var slip = await app.PageAsync("/faults");

        Assert.Contains("Smells of mice", own.QuerySelector(".history")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("left aside until it is mended", slip.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(65, slip.QuerySelectorAll("button.symptom").Length);
    }

    [Fact]
    public async Task What_is_no_answer_is_refused_and_nothing_is_kept()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var faults = $"/visits/{rounds.Visit}/faults";

        using var told = await app.PostFormAsync(faults, faults, ("act", "Symptom"), ("value", "gremlins"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.StatusCode);
        Assert.Contains("What is wrong with the car?", (await app.PageAsync(faults)).Body!.TextContent, StringComparison.Ordinal);
    }
}
