using System.Net;

namespace Tickover.Web.Tests.Supply;

public sealed class SupplyPageTests
{
    [Fact]
    public async Task The_samples_are_at_hand()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/supply");

        Assert.Equal(["/supply/tern"], page.QuerySelectorAll(".sample a").Select(a => a.GetAttribute("href")!), StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_line_is_drawn_with_every_part_and_its_case_in_words()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/supply/tern?case=hot");

        Assert.Contains("3 float chambers at its heights, hot", page.QuerySelector("svg.supply-picture")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Equal("Hot", page.QuerySelector(".seg [aria-current]")!.TextContent);
        Assert.Equal(15, page.QuerySelectorAll("tbody tr").Length);
        Assert.Contains("Petrol vapour burns and kills", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_shows_its_working_with_its_equation()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/supply/tern?part=filter");

        Assert.Contains("What the filter takes", page.QuerySelector("#working")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("supply (6)", page.QuerySelector("#working")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/supply/nothing", HttpStatusCode.NotFound)]
    [InlineData("/supply/tern?case=cold", HttpStatusCode.BadRequest)]
    [InlineData("/supply/tern?part=carpet", HttpStatusCode.BadRequest)]
    public async Task What_is_not_there_is_said(string address, HttpStatusCode status)
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, address);

        using var answer = await app.SendAsync(request);

        Assert.Equal(status, answer.StatusCode);
    }
}
