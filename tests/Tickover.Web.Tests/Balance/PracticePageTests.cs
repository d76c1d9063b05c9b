using System.Net;
using AngleSharp.Html.Dom;

namespace Tickover.Web.Tests.Balance;

/// <summary>The practice engine as a newcomer uses it: begin, read, follow the advice, hand over.</summary>
public sealed class PracticePageTests
{
    private const int MostActs = 90;

    [Theory]
    [InlineData("tern-2800")]
    [InlineData("dunlin")]
    [InlineData("wigeon")]
    public async Task Pressing_the_button_of_the_next_move_leads_to_the_end_of_the_advice_and_to_a_score(string car)
    {
        await using var app = await TestApp.LookAsync();
        using var begun = await app.PostFormAsync("/practice", "/practice", ("car", car), ("difficulty", "0"), ("seed", "7"));
        var address = begun.Headers.Location!.ToString();
        Assert.Equal($"/practice/{car}/0/7", address);

        for (var k = 0; k < MostActs && await NextAsync(app, address) is { } next; k++)
        {
            address = next;
        }

        // Whether the engine is truly within limits is the study's question; that nothing is left to press is the page's.
        Assert.Contains("Balanced", (await app.PageAsync(address)).QuerySelector("#next-move")!.TextContent, StringComparison.Ordinal);
        using var over = await app.PostFormAsync(address, $"/practice/{car}/0/7/acts", ("end", "1"));
        var score = (await app.PageAsync(over.Headers.Location!.ToString())).QuerySelector(".score")!.TextContent;
        Assert.Contains("0 of 0 found", score, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_press_of_the_next_move_is_done_by_the_engine_with_rods_to_take_off_and_to_offer_too()
    {
        await using var app = await TestApp.LookAsync();
        var (address, said) = ("/practice/osprey-v8/0/7", new List<string>());

        for (var k = 0; k < MostActs / 3; k++)
        {
            said.Add((await app.PageAsync(address)).QuerySelector("#next-move .what")!.TextContent);
            var next = await NextAsync(app, address);
            Assert.NotEqual(address, next, StringComparer.Ordinal);
            address = next!;
        }

        Assert.Contains("Take the rods off", said, StringComparer.Ordinal);
        Assert.Contains("Offer the rod to its ball", said, StringComparer.Ordinal);
        Assert.Contains("Put the rods back on", said, StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_same_address_is_the_same_engine_and_undo_takes_the_last_act_off_it()
    {
        await using var app = await TestApp.LookAsync();
        const string address = "/practice/osprey-v8/1/7?acts=r.t%3Astop%3A2%3A1";

        var (one, two) = (await app.PageAsync(address), await app.PageAsync(address));
        Assert.Equal(one.QuerySelector("svg.engine-picture")!.OuterHtml, two.QuerySelector("svg.engine-picture")!.OuterHtml);
        Assert.Contains("8 barrels, 8 read", one.QuerySelector("svg.engine-picture")!.GetAttribute("aria-label")!, StringComparison.Ordinal);

        using var undone = await app.PostFormAsync(address, "/practice/osprey-v8/1/7/undo?acts=r.t%3Astop%3A2%3A1");
        Assert.Equal("/practice/osprey-v8/1/7?acts=r", undone.Headers.Location!.ToString());
    }

    [Fact]
    public async Task What_cannot_be_done_is_said_and_changes_nothing()
    {
        await using var app = await TestApp.LookAsync();

        using var rods = await app.PostFormAsync("/practice/osprey-v8/0/7?acts=r.o", "/practice/osprey-v8/0/7/acts", ("held", "1500"));

        Assert.Equal("/practice/osprey-v8/0/7?acts=r.o", rods.Headers.Location!.ToString());
        Assert.Contains("Put the rods back first", (await app.PageAsync(rods.Headers.Location!.ToString())).QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/practice/no-such/0/7", HttpStatusCode.NotFound)]
    [InlineData("/practice/osprey-v8/9/7", HttpStatusCode.NotFound)]
    [InlineData("/practice/osprey-v8/0/7?acts=what.t:nothing:1.f:nonsense.b:77", HttpStatusCode.OK)]
    public async Task A_mangled_address_is_no_fault_of_the_server(string address, HttpStatusCode expected)
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await app.GetAsync(address);

        Assert.Equal(expected, answer.StatusCode);
    }

    [Fact]
    public async Task A_fault_named_right_is_mended_and_counts()
    {
        await using var app = await TestApp.LookAsync();
        var page = await app.PageAsync("/practice/osprey-v8/1/7?acts=r.e");
        var hidden = page.QuerySelectorAll(".score p").First(p => p.TextContent.StartsWith("Hidden:", StringComparison.Ordinal)).TextContent;
        Assert.Contains("Not found.", hidden, StringComparison.Ordinal);
        var options = (await app.PageAsync("/practice/osprey-v8/1/7?acts=r")).QuerySelectorAll("#fault option").OfType<IHtmlOptionElement>();
        var right = options.First(o => hidden.Contains(o.TextContent, StringComparison.Ordinal));

        var mended = await app.PageAsync($"/practice/osprey-v8/1/7?acts=r.f:{right.Value.Replace(' ', '_')}.e");

        Assert.Contains("1 of 1 found, 0 named", mended.QuerySelector(".score")!.TextContent, StringComparison.Ordinal);
    }

    // The address after the button of the next move; null where the advice is done.
    private static async Task<string?> NextAsync(TestApp app, string address)
    {
        var page = await app.PageAsync(address);
        var form = page.QuerySelector("#next-move form");
        if (form is null)
        {
            return null;
        }

        var fields = form.QuerySelectorAll("input[name]").Select(i => (i.GetAttribute("name")!, i.GetAttribute("value") ?? "")).ToList();
        using var request = new HttpRequestMessage(HttpMethod.Post, form.GetAttribute("action")) { Content = new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Item1, f.Item2))) };
        using var answer = await app.SendAsync(request);
        return answer.Headers.Location!.ToString();
    }
}
