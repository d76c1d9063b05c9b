using System.Net;

namespace Tickover.Web.Tests.Linkages;

public sealed class LinkagePageTests
{
    [Fact]
    public async Task The_samples_are_at_hand()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/linkages");

        Assert.Equal(["/linkages/osprey", "/linkages/tern"], page.QuerySelectorAll(".sample a").Select(a => a.GetAttribute("href")!), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_linkage_is_drawn_with_its_moves_and_a_pedal_that_works_as_a_form()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/linkages/osprey?down=40");

        Assert.Contains("with the pedal 40", page.QuerySelector("svg.linkage-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.StartsWith("Shorten left bank rod by five eighths of a turn.", page.QuerySelector(".moves li")!.TextContent.Trim(), StringComparison.Ordinal);
        var form = page.QuerySelector("form[data-pedal-form]")!;
        Assert.Equal(("get", "/linkages/osprey"), (form.GetAttribute("method"), form.GetAttribute("action")));
        var pedal = form.QuerySelector("input[type=range][name=down]")!;
        Assert.Equal(("0", "100", "40"), (pedal.GetAttribute("min"), pedal.GetAttribute("max"), pedal.GetAttribute("value")));
        Assert.Equal(11, page.QuerySelectorAll("tbody tr").Length);
    }

    [Fact]
    public async Task As_advised_shows_the_linkage_set_and_says_so()
    {
        await using var app = await TestApp.LookAsync();

        var (found, set) = (await app.PageAsync("/linkages/tern?down=0"), await app.PageAsync("/linkages/tern?down=0&set=1"));

        Assert.Contains("further than 39 % from the mean at idle", found.QuerySelector("svg.linkage-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Contains("set as advised", set.QuerySelector("svg.linkage-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Equal("As advised", set.QuerySelector(".seg [aria-current]")!.TextContent);
        Assert.Equal("1", set.QuerySelector("form[data-pedal-form] input[name=set]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_script_gets_the_drawing_alone()
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/linkages/osprey?down=60");
        request.Headers.Add("X-Tickover-Fragment", "drawing");

        using var answer = await app.SendAsync(request);
        var html = await answer.Content.ReadAsStringAsync();

        Assert.StartsWith("<figure", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<html", html, StringComparison.Ordinal);
        Assert.Contains("pedal 60", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_document_with_slips_comes_back_whole_with_all_of_them()
    {
        await using var app = await TestApp.LookAsync();
        var text = (await File.ReadAllTextAsync(Path.Combine(Repository.Samples, "osprey.linkage.json"))).Replace("\"left rear/bank\"", "\"left rear/bonk\"", StringComparison.Ordinal).Replace("\"bore\": 40", "\"bore\": 400", StringComparison.Ordinal);

        using var answer = await app.PostFormAsync("/linkages", "/linkages", ("document", text));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(5, page.QuerySelectorAll(".faults li").Length);
        Assert.Contains("left rear/bonk", page.QuerySelector("textarea")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/linkages/nothing", HttpStatusCode.NotFound)]
    [InlineData("/linkages/osprey?down=101", HttpStatusCode.BadRequest)]
    [InlineData("/linkages/osprey?down=half", HttpStatusCode.BadRequest)]
    public async Task What_is_not_there_is_said_with_a_way_back(string address, HttpStatusCode status)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync(address, status);

        Assert.StartsWith("/linkages", page.QuerySelector(".strip a.back")!.GetAttribute("href"), StringComparison.Ordinal);
    }
}
