using System.Net;
using System.Text;
using AngleSharp.Html.Dom;
using Tickover.Web.Tests.Balance;

namespace Tickover.Web.Tests.Worksheets;

/// <summary>Every kind of document can be looked at without a visit: dropped, pasted, or a sample.</summary>
public sealed class IntakePageTests
{
    public static TheoryData<string, string, string> Kinds => new()
    {
        { "/tanks", "tern.tank.json", "/tanks/" },
        { "/supply", "tern.supply.json", "/supply/" },
        { "/gauges", "tern.gauge.json", "/gauges/" },
        { "/walls", "tern.wall.json", "/walls/" },
        { "/walls", "tern.leak.json", "/leaks/" },
        { "/linkages", "tern.linkage.json", "/linkages/" },
        { "/strip-down", "tern.level.json", "/levels/" },
        { "/strip-down", "tern.wear.json", "/wear/" },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_file_that_is_dropped_gets_a_page_of_its_own_whose_back_leads_to_the_list(string list, string sample, string pages)
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await DropAsync(app, list, Encoding.UTF8.GetBytes((await SampleAsync(sample)).Replace("Larkfield Tern 2800", "Marram Six", StringComparison.Ordinal)));

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Matches($"^{pages}[0-9a-f]{{12}}$", answer.Headers.Location!.OriginalString);
        var page = await app.PageAsync(answer.Headers.Location.OriginalString);
        Assert.StartsWith("Marram Six", page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(list, page.QuerySelector(".strip a.back")!.GetAttribute("href"));
        Assert.NotNull(page.QuerySelector("main svg"));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task What_is_wrong_with_it_is_said_and_the_text_comes_back(string list, string sample, string pages)
    {
        await using var app = await TestApp.LookAsync();
        var text = (await SampleAsync(sample)).Replace("\"name\"", "\"nane\"", StringComparison.Ordinal);

        using var answer = await app.PostFormAsync(list, list, ("document", text));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotEmpty(page.QuerySelectorAll("[role=alert] .faults li"));
        Assert.Equal(text.ReplaceLineEndings("\n"), ((IHtmlTextAreaElement)page.QuerySelector("textarea")!).Value.ReplaceLineEndings("\n"));
        Assert.Contains(page.QuerySelectorAll(".sample a"), a => a.GetAttribute("href")!.StartsWith(pages, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/tanks", 0, "Nothing was chosen")]
    [InlineData("/supply", (1 << 20) + 1, "The file is larger than 1 MB")]
    [InlineData("/gauges", 84, "Not readable as JSON")]
    public async Task No_file_a_huge_one_and_one_of_another_kind_are_told_apart(string list, int bytes, string said)
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await DropAsync(app, list, [.. Enumerable.Repeat((byte)'s', bytes)]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(said, (await TestApp.ParseAsync(answer)).QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tank_given_as_a_mesh_is_sent_to_the_command_line()
    {
        await using var app = await TestApp.LookAsync();
        const string Mesh = """{ "format": "tickover-tank-1", "name": "x", "tanks": [{ "mesh": { "file": "box.stl" } }] }""";

        using var answer = await app.PostFormAsync("/tanks", "/tanks", ("document", Mesh));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("box.stl", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("tickover tank on the command line", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Come_to_from_a_visit_it_goes_back_there()
    {
        await using var app = await TestApp.StartAsync();
        var visit = (await Rounds.BeginAsync(app, sample: null)).Visit;
        var list = $"/gauges?visit={visit}";

        using var answer = await app.PostFormAsync(list, "/gauges", ("document", await SampleAsync("tern.gauge.json")));

        Assert.EndsWith($"?visit={visit}", answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
        Assert.Equal(list, (await app.PageAsync(answer.Headers.Location.OriginalString)).QuerySelector(".strip a.back")!.GetAttribute("href"));
        Assert.Equal($"/visits/{visit}/gauge", (await app.PageAsync(list)).QuerySelector(".strip a.back")!.GetAttribute("href"));
    }

    [Theory]
    [InlineData("/tanks/none", "/tanks")]
    [InlineData("/supply/none", "/supply")]
    [InlineData("/gauges/none", "/gauges")]
    [InlineData("/levels/none", "/strip-down")]
    [InlineData("/wear/none", "/strip-down")]
    public async Task What_is_no_longer_in_hand_is_said_with_a_way_back(string address, string list)
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync(address, HttpStatusCode.NotFound);

        Assert.Equal(list, page.QuerySelector(".strip a.back")!.GetAttribute("href"));
    }

    private static Task<string> SampleAsync(string name) => File.ReadAllTextAsync(Path.Combine(Repository.Samples, name));

    private static async Task<HttpResponseMessage> DropAsync(TestApp app, string list, byte[] file)
    {
        var form = (await app.PageAsync(list)).Forms.First(f => string.Equals(f.GetAttribute("action"), list, StringComparison.Ordinal));
        using var fields = new MultipartFormDataContent();
        foreach (var input in form.QuerySelectorAll("input[type=hidden]"))
        {
            fields.Add(new StringContent(input.GetAttribute("value")!), input.GetAttribute("name")!);
        }

        fields.Add(new ByteArrayContent(file), "file", "mine.json");
        using var request = new HttpRequestMessage(HttpMethod.Post, list) { Content = fields };
        return await app.SendAsync(request);
    }
}
