using System.Net;
using AngleSharp.Html.Dom;

namespace Tickover.Web.Tests.Lan;

/// <summary>A browser of sorts at an address: cookies, forms, no redirects followed.</summary>
internal sealed class Visitor(HttpMessageHandler handler, string from, Uri origin) : IDisposable
{
    private readonly HttpClient _client = new(handler) { BaseAddress = origin };

    public Dictionary<string, string> Cookies { get; } = new(StringComparer.Ordinal);

    /// <summary>The Set-Cookie lines of the last answer.</summary>
    public IReadOnlyList<string> LastSet { get; private set; } = [];

    public string Token
    {
        get => Cookies.Single(c => c.Key.EndsWith("tickover-device", StringComparison.Ordinal)).Value;
        set => Cookies["__Host-tickover-device"] = value;
    }

    public void Dispose() => _client.Dispose();

    public Task<HttpResponseMessage> GetAsync(string address, params (string Name, string Value)[] headers) =>
        SendAsync(new HttpRequestMessage(HttpMethod.Get, address), headers);

    public async Task<HttpStatusCode> StatusAsync(string address, params (string Name, string Value)[] headers)
    {
        using var answer = await GetAsync(address, headers);
        return answer.StatusCode;
    }

    public Task<HttpResponseMessage> PairAsync(string name, string code) => PostFormAsync("/pair", "/pair", ("name", name), ("code", code));

    public async Task<HttpResponseMessage> PostFormAsync(string page, string action, params (string Name, string Value)[] fields)
    {
        using var shown = await GetAsync(page);
        var document = await TestApp.ParseAsync(shown);
        var form = document.Forms.First(f => string.Equals(f.GetAttribute("action"), action, StringComparison.Ordinal));
        var values = form.QuerySelectorAll("input[name]").Cast<IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.GetAttribute("value") ?? "", StringComparer.Ordinal);
        foreach (var (name, value) in fields)
        {
            values[name] = value;
        }

        return await SendAsync(new HttpRequestMessage(HttpMethod.Post, action) { Content = new FormUrlEncodedContent(values) });
    }

    public async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, params (string Name, string Value)[] headers)
    {
        request.Headers.Add(LanApp.From, from);
        if (Cookies.Count > 0)
        {
            request.Headers.Add("Cookie", string.Join("; ", Cookies.Select(c => $"{c.Key}={c.Value}")));
        }

        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        var answer = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        LastSet = answer.Headers.TryGetValues("Set-Cookie", out var set) ? [.. set] : [];
        foreach (var cookie in LastSet)
        {
            var pair = cookie.Split(';')[0].Split('=', 2);
            Cookies[pair[0]] = pair[1];
        }

        return answer;
    }
}
