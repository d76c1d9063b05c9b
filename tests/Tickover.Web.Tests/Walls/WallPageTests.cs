using System.Net;

namespace Tickover.Web.Tests.Walls;

public sealed class WallPageTests
{
    [Fact]
    public async Task The_samples_are_at_hand()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/walls");

        Assert.Equal(["/walls/gannet", "/walls/tern", "/leaks/gannet", "/leaks/tern"], page.QuerySelectorAll(".sample a").Select(a => a.GetAttribute("href")!), StringComparer.Ordinal);
        Assert.Contains("welding", page.QuerySelector("[role=note]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cautions_stand_before_the_map_and_a_cell_opens_its_working()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/walls/tern?cell=b3");
        var html = page.DocumentElement.OuterHtml;

        Assert.True(html.IndexOf("No welding", StringComparison.Ordinal) < html.IndexOf("wall-picture", StringComparison.Ordinal));
        Assert.Contains("0.35", page.QuerySelector("#cell")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("B3", page.QuerySelector(".pick option[selected]")!.GetAttribute("value"));
        Assert.Equal("/walls/tern?cell=J3#cell", page.QuerySelector("svg.wall-picture a[data-part=J3]")!.GetAttribute("href"));
        Assert.Equal("true", page.QuerySelector("svg.wall-picture a[data-part=B3]")!.GetAttribute("aria-current"));
        Assert.Contains("patch over one place is refused", page.QuerySelector(".card.marked")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_leak_test_shows_its_curve_and_the_smallest_leak_it_saw()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/leaks/tern");

        Assert.Contains("It leaks", page.QuerySelector("svg.leak-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Contains("would wreck this tank", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("smallest leak this test could be trusted to see", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_document_with_slips_comes_back_whole_with_all_of_them()
    {
        await using var app = await TestApp.LookAsync();
        var text = (await File.ReadAllTextAsync(Path.Combine(Repository.Samples, "tern.wall.json"))).Replace("\"brass\"", "\"bras\"", StringComparison.Ordinal).Replace("\"thickness\": 0.9", "\"thickness\": -0.9", StringComparison.Ordinal);

        using var answer = await app.PostFormAsync("/walls", "/walls", ("document", text));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(2, page.QuerySelectorAll(".faults li").Length);
        Assert.Contains("bras", page.QuerySelector("textarea")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/walls/nothing", HttpStatusCode.NotFound)]
    [InlineData("/leaks/nothing", HttpStatusCode.NotFound)]
    [InlineData("/walls/tern?cell=Z99", HttpStatusCode.BadRequest)]
    public async Task What_is_not_there_is_said_with_a_way_back(string address, HttpStatusCode status)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync(address, status);

        Assert.StartsWith("/walls", page.QuerySelector(".strip a.back")!.GetAttribute("href"), StringComparison.Ordinal);
    }
}
