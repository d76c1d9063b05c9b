using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using System.Net;
using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests;

/// <summary>The whole app in memory on a folder of its own, and a browser of sorts: cookies, forms, no redirects followed.</summary>
internal sealed class TestApp : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly Dictionary<string, string> _cookies = new(StringComparer.Ordinal);
    private readonly bool _owns;

    private TestApp(WebApplication app, string folder, bool owns)
    {
        (_app, _owns) = (app, owns);
        Folder = folder;
        Client = app.GetTestServer().CreateClient();
    }

    public string Folder { get; }

    public HttpClient Client { get; }

    public ICarShelf Shelf => _app.Services.GetRequiredService<ICarShelf>();

    public string Document(string car) => Shelf.Read(CarId.Read(car)!)!.Document;

    public Workshop.Visits.IRecord Record => _app.Services.GetRequiredService<Workshop.Visits.IRecord>();

    /// <summary>A browser of its own at the app that is shared by those who only look: nothing may be kept on it.</summary>
    public static async Task<TestApp> LookAsync()
    {
        var shared = await SharedApp.Task;
        return new TestApp(shared._app, shared.Folder, owns: false);
    }

    /// <summary>An app of its own with the demonstration in its record.</summary>
    public static Task<TestApp> DemonstrationAsync() => StartAsync([], BlankRecord.CopyDemonstrationToAsync);

    /// <summary>An app of its own with an empty record and some sample cars on its shelf.</summary>
    public static Task<TestApp> StartAsync(params IReadOnlyList<string> samples) => StartAsync(samples, BlankRecord.CopyToAsync);

    private static async Task<TestApp> StartAsync(IReadOnlyList<string> samples, Func<string, Task> begin)
    {
        var folder = Directory.CreateTempSubdirectory("tickover-web-").FullName;
        await begin(folder);
        var documents = new List<(string Name, string Text)>();
        foreach (var sample in samples)
        {
            documents.Add((sample, await File.ReadAllTextAsync(Path.Combine(Repository.Samples, sample + ".car.json"))));
        }

        var options = new WebAppOptions { DataFolder = folder, SamplesFolder = Repository.Samples };
        var app = await WebApp.BuildAsync([], options, builder =>
        {
            builder.WebHost.UseTestServer();
            builder.Logging.ClearProviders();

            // Surveys made ahead of the first page would take the processor from the tests; a page that needs one makes it.
            builder.Services.Remove(builder.Services.Single(s => s.ImplementationType == typeof(FirstSurveys)));
        });
        foreach (var (name, text) in documents)
        {
            app.Services.GetRequiredService<ICarShelf>().Save(CarId.Read(name)!, text);
        }

        await app.StartAsync();
        return new TestApp(app, folder, owns: true);
    }

    public async Task<HttpResponseMessage> GetAsync(string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        return await SendAsync(request);
    }

    public async Task<IHtmlDocument> PageAsync(string address, HttpStatusCode expected = HttpStatusCode.OK)
    {
        using var answer = await GetAsync(address);
        Assert.Equal(expected, answer.StatusCode);
        return await ParseAsync(answer);
    }

    public static async Task<IHtmlDocument> ParseAsync(HttpResponseMessage answer) =>
        await new HtmlParser().ParseDocumentAsync(await answer.Content.ReadAsStringAsync());

    /// <summary>Sends the form of a page that posts to an address, with its own fields and those given.</summary>
    public async Task<HttpResponseMessage> PostFormAsync(string page, string action, params IReadOnlyList<(string Name, string Value)> fields)
    {
        var document = await PageAsync(page, await StatusAsync(page));
        var form = document.Forms.First(f => string.Equals(f.GetAttribute("action"), action, StringComparison.Ordinal)
            && fields.All(given => f.QuerySelector($"[name='{given.Name}']") is not null));
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var input in form.QuerySelectorAll("input[name]:not([type=file]), textarea[name]"))
        {
            values[input.GetAttribute("name")!] = input is IHtmlTextAreaElement area ? area.Value : input.GetAttribute("value") ?? "";
        }

        foreach (var select in form.QuerySelectorAll("select[name]").OfType<IHtmlSelectElement>())
        {
            values[select.Name!] = select.Value ?? "";
        }

        foreach (var (name, value) in fields)
        {
            values[name] = value;
        }

        using var request = new HttpRequestMessage(HttpMethod.Post, action) { Content = new FormUrlEncodedContent(values) };
        return await SendAsync(request);
    }

    public async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request)
    {
        if (_cookies.Count > 0)
        {
            request.Headers.Add("Cookie", string.Join("; ", _cookies.Select(c => $"{c.Key}={c.Value}")));
        }

        var answer = await Client.SendAsync(request);
        if (answer.Headers.TryGetValues("Set-Cookie", out var cookies))
        {
            foreach (var cookie in cookies)
            {
                var pair = cookie.Split(';')[0].Split('=', 2);
                _cookies[pair[0]] = pair[1];
            }
        }

        return answer;
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        if (_owns)
        {
            await _app.DisposeAsync();
            Directory.Delete(Folder, recursive: true);
        }
    }

    /// <summary>Ends the app and leaves its folder.</summary>
    public ValueTask StopAsync() => _app.DisposeAsync();

    private async Task<HttpStatusCode> StatusAsync(string page)
    {
        using var answer = await GetAsync(page);
        return answer.StatusCode;
    }
}
