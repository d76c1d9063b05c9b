using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;
using Tickover.Web;
using Tickover.Web.Frame;

namespace Tickover.Browser.Tests;

/// <summary>The app with a page of entry beside its own, which counts what reaches it; it can go away and come back on the same port.</summary>
public sealed class EntryHost : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-entry-").FullName;
    private WebApplication? _app;

    /// <summary>Address of the app, the same after a restart.</summary>
    public string Address { get; private set; } = "http://127.0.0.1:0";

    /// <summary>What was kept, by key, with the fields; it outlives a restart as a database would.</summary>
    public ConcurrentDictionary<string, Dictionary<string, string>> Kept { get; } = new(StringComparer.Ordinal);

    /// <summary>Values in the order in which they were kept.</summary>
    public ConcurrentQueue<string> Order { get; } = new();

    /// <summary>Posts that arrived, also those that were refused or already known.</summary>
    public int Posts => _posts;

    /// <summary>Bytes of the photograph of a key.</summary>
    public ConcurrentDictionary<string, byte[]> Photographs { get; } = new(StringComparer.Ordinal);

    /// <summary>Says what to answer instead of keeping the entry; null to keep it.</summary>
    public Func<IFormCollection, IResult?> Instead { get; set; } = _ => null;

    /// <summary>How many answers are yet to be lost after the entry was kept.</summary>
    public int AnswersToLose { get; set; }

    private int _posts;

    /// <summary>The form on the page.</summary>
    public string Form { get; set; } = """
        <form method="post" action="/entry" data-outbox="Air {value} kg/h" data-draft="air" class="card stack">
          <input type="hidden" name="key" value="11111111-1111-4111-8111-111111111111">
          <label for="value">Air, kg/h</label><input id="value" name="value" required>
          <label for="note">Note</label><textarea id="note" name="note"></textarea>
          <button class="btn go">Keep</button>
        </form>
        """;

    /// <summary>Starts the app.</summary>
    /// <returns>When it answers.</returns>
    public async Task StartAsync()
    {
        _app = await WebApp.BuildAsync(["--Logging:LogLevel:Default=None"], new WebAppOptions { DataFolder = _folder, Address = Address });
        _app.MapGet("/entry", Page);
        _app.MapPost("/entry", (Delegate)TakeAsync);
        await _app.StartAsync();
        Address = _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
    }

    /// <summary>Stops the app; nothing answers at the address.</summary>
    /// <returns>When it is gone.</returns>
    public async Task StopAsync()
    {
        await _app!.DisposeAsync();
        _app = null;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_app is not null)
        {
            await StopAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>The page as an answer to what was sent, such as the form with what is wrong in it.</summary>
    /// <param name="status">Status of the answer.</param>
    /// <returns>The answer; it shows <see cref="Form"/> as it is then.</returns>
    public IResult Shown(int status)
    {
        var page = Page();
        page.StatusCode = status;
        return page;
    }

    private RazorComponentResult<PageFrame> Page() => new(new
    {
        Title = "Entry",
        Heading = "Entry",
        ChildContent = (Microsoft.AspNetCore.Components.RenderFragment)Content,
    });

    private void Content(RenderTreeBuilder builder)
    {
        builder.AddMarkupContent(0, Form);
        var rows = string.Concat(Order.Select(value => $"<li>{System.Net.WebUtility.HtmlEncode(value)}</li>"));
        builder.AddMarkupContent(1, $"<section class=\"card\" id=\"readings\" data-refresh><h2>Readings</h2><ol>{rows}</ol><form><label for=\"inside\">Inside</label><input id=\"inside\" name=\"inside\"></form></section>");
    }

    private async Task<IResult> TakeAsync(HttpContext context)
    {
        Interlocked.Increment(ref _posts);
        var form = await context.Request.ReadFormAsync();
        if (Instead(form) is { } instead)
        {
            return instead;
        }

        var key = form["key"].ToString();
        var isNew = Kept.TryAdd(key, form.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal));
        if (isNew)
        {
            Order.Enqueue(form["value"].ToString());
            foreach (var file in form.Files)
            {
                using var memory = new MemoryStream();
                await file.CopyToAsync(memory);
                Photographs[key] = memory.ToArray();
            }
        }

        if (AnswersToLose > 0)
        {
            AnswersToLose--;
            context.Abort();
        }

        return context.Request.Headers.Accept == "application/json"
            ? Results.Json(new { status = isNew ? "kept" : "keptBefore", words = "Kept.", number = Kept.Count.ToString(CultureInfo.InvariantCulture) })
            : Results.Redirect("/entry");
    }
}
