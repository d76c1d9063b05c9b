using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;

namespace Tickover.Web.Tests.Frame;

public sealed partial class EveryPageTests
{
    private static readonly string[] Addresses =
    [
        "/", "/cars", "/cars/new", "/cars/osprey-v8", "/cars/osprey-v8?barrel=3", "/cars/osprey-v8/document", "/cars/osprey-v8/mixture",
        "/cars/osprey-v8/mixture?barrel=8&rpm=3000&throttle=20", "/cars/osprey-v8/mixture/table", "/cars/osprey-v8/jets",
        "/cars/osprey-v8/jets?part=idleJet", "/cars/osprey-v8/jets?part=idleJet&value=60",
        "/cars/osprey-v8/mixture?part=mainJet&value=150&show=difference", "/cars/osprey-v8/mixture?part=choke&value=34+mm&show=trial",
        "/cars/faulty", "/cars/no-such-car", "/cars/osprey-v8/mixture?rpm=0", "/cars/osprey-v8/mixture?barrel=9", "/checks", "/physics", "/shelf", "/linkages", "/linkages/osprey", "/linkages/tern?down=80&set=1", "/linkages/none", "/linkages/tern?down=200", "/linkage-document", "/tanks", "/tanks/tern", "/supply", "/supply/tern", "/gauges", "/strip-down", "/walls", "/walls/tern?cell=J3", "/walls/gannet", "/leaks/tern", "/walls/none", "/wall-document", "/leak-document", "/faults", "/faults?s=flat-spot-stab&a=watch-shots:both-weak", "/faults?s=none", "/faults-document", "/no/such/page",
    ];

    public static TheoryData<string> All => [.. Addresses];

    [Theory]
    [MemberData(nameof(All))]
    public async Task Keeps_to_the_content_security_policy_and_has_one_heading_a_title_a_language_and_no_identifier_twice(string address)
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await app.GetAsync(address);
        var html = await answer.Content.ReadAsStringAsync();

        Assert.True((int)answer.StatusCode < 500, $"{address} answers {answer.StatusCode}");
        Assert.StartsWith("default-src 'none'", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.DoesNotMatch(InlineStyleOrHandler(), html);
        Assert.DoesNotMatch(InlineScript(), html);
        Assert.DoesNotMatch(AddressElsewhere(), html);
        IsWellFormed(await TestApp.ParseAsync(answer));
    }

    [Fact]
    public async Task Says_nothing_about_the_inside_of_the_program_when_a_page_is_not_there()
    {
        await using var app = await TestApp.LookAsync();

        var page = await app.PageAsync("/cars/../../etc/passwd", HttpStatusCode.NotFound);

        Assert.Contains("No such page", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(" at Tickover.", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("localhost", HttpStatusCode.OK)]
    [InlineData("127.0.0.1:5480", HttpStatusCode.OK)]
    [InlineData("[::1]:5480", HttpStatusCode.OK)]
    [InlineData("elsewhere.example", HttpStatusCode.BadRequest)]
    public async Task Answers_to_loopback_names_only(string host, HttpStatusCode expected)
    {
        await using var app = await TestApp.LookAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/cars");
        request.Headers.Host = host;

        using var answer = await app.SendAsync(request);

        Assert.Equal(expected, answer.StatusCode);
    }

    [Fact]
    public async Task A_theme_is_on_the_page_from_its_first_byte_once_it_is_chosen()
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await app.PostFormAsync("/cars/new", "/theme", ("theme", "evening"));
        var page = await app.PageAsync("/cars");

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/cars/new", answer.Headers.Location!.OriginalString);
        Assert.Equal("evening", page.DocumentElement.GetAttribute("data-theme"));
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    public async Task A_form_leads_back_to_this_server_only(string back)
    {
        await using var app = await TestApp.LookAsync();

        using var answer = await app.PostFormAsync("/cars", "/theme", ("theme", "paper"), ("back", back));

        Assert.Equal("/", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task Assets_are_kept_for_good_under_an_address_that_changes_with_them()
    {
        await using var app = await TestApp.LookAsync();
        var page = await app.PageAsync("/cars");
        var sheet = page.QuerySelector("link[rel=stylesheet]")!.GetAttribute("href")!;

        using var style = await app.GetAsync(sheet);
        using var font = await app.GetAsync(page.QuerySelector("link[rel=preload]")!.GetAttribute("href")!);
        using var script = await app.GetAsync(page.QuerySelector("script")!.GetAttribute("src")!);
        using var module = await app.GetAsync(sheet.Replace("css/tickover.css", "js/swap.js", StringComparison.Ordinal));
        using var older = await app.GetAsync("/assets/000000000000/css/tickover.css");

        Assert.Equal(("text/css", "font/woff2", "text/javascript", "text/javascript"), (Type(style), Type(font), Type(script), Type(module)));
        Assert.Contains("immutable", style.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
        Assert.True(older.Headers.CacheControl!.NoStore);

        static string Type(HttpResponseMessage answer)
        {
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            return answer.Content.Headers.ContentType!.MediaType!;
        }
    }

    private static void IsWellFormed(IHtmlDocument page)
    {
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.NotEmpty(page.Title!);
        Assert.Equal("en-GB", page.DocumentElement.GetAttribute("lang"));
        var twice = page.All.Select(e => e.Id).Where(i => !string.IsNullOrEmpty(i)).GroupBy(i => i, StringComparer.Ordinal).Where(g => g.Count() > 1);
        Assert.Empty(twice.Select(g => g.Key));
        Assert.All(page.QuerySelectorAll("input:not([type=hidden]), textarea"), field => Assert.True(
            field.Closest("label") is not null || page.QuerySelector($"label[for='{field.Id}']") is not null, field.OuterHtml));
    }

    [GeneratedRegex("<[^>]*\\s(style|on[a-z]+)\\s*=", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex InlineStyleOrHandler();

    [GeneratedRegex("<script(?![^>]*\\ssrc=)|<style", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex InlineScript();

    [GeneratedRegex("(src|href|action)=\"(https?:)?//", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex AddressElsewhere();
}
