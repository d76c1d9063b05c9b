using System.Net;

namespace Tickover.Web.Tests.Lan;

public sealed class FormGuardTests
{
    [Theory]
    [InlineData("Origin", "http://localhost")]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    public async Task A_form_of_the_outbox_of_our_own_pages_is_taken(string header, string value)
    {
        await using var app = await TestApp.StartAsync();

        using var answer = await PostThemeAsync(app, ("Tickover-Outbox", "key-1"), (header, value));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
    }

    [Theory]
    [InlineData("Origin", "http://elsewhere.example")]
    [InlineData("Origin", "https://localhost")]
    [InlineData("Origin", "http://localhost:81")]
    [InlineData("Origin", "null")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Sec-Fetch-Site", "none")]
    public async Task A_form_of_the_outbox_of_another_page_is_not(string header, string value)
    {
        await using var app = await TestApp.StartAsync();

        using var answer = await PostThemeAsync(app, ("Tickover-Outbox", "key-1"), (header, value));

        Assert.InRange((int)answer.StatusCode, 400, 403);
    }

    [Fact]
    public async Task The_header_alone_opens_nothing()
    {
        await using var app = await TestApp.StartAsync();

        using var alone = await PostThemeAsync(app, ("Tickover-Outbox", "key-1"));
        using var origin = await PostThemeAsync(app, ("Origin", "http://localhost"));
        using var contradiction = await PostThemeAsync(
            app, ("Tickover-Outbox", "key-1"), ("Origin", "http://localhost"), ("Sec-Fetch-Site", "cross-site"));

        Assert.Equal(HttpStatusCode.BadRequest, alone.StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, origin.StatusCode);
        Assert.InRange((int)contradiction.StatusCode, 400, 403);
    }

    private static async Task<HttpResponseMessage> PostThemeAsync(TestApp app, params IReadOnlyList<(string Name, string Value)> headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/theme")
        {
            Content = new FormUrlEncodedContent(new Dictionary<string, string>(StringComparer.Ordinal) { ["theme"] = "evening", ["back"] = "/" }),
        };
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return await app.SendAsync(request);
    }
}
