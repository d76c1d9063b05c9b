using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Tickover.Web;
using Tickover.Workshop.Cars;

namespace Tickover.Browser.Tests;

/// <summary>The app on a free port with the samples taken in, and one browser for all tests of the assembly.</summary>
public sealed class Workshop : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-browser-").FullName;
    private WebApplication? _app;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Address of the app.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The cars' documents in the record.</summary>
    public ICarShelf Shelf => _app!.Services.GetRequiredService<ICarShelf>();

    /// <summary>The browser, for tests that need a host or a context of their own.</summary>
    public IBrowser Browser => _browser!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        _app = await WebApp.BuildAsync(
            ["--Logging:LogLevel:Default=Error"],
            new WebAppOptions { DataFolder = _folder, SamplesFolder = Repository.Samples, Address = "http://127.0.0.1:0" });
        foreach (var sample in Directory.GetFiles(Repository.Samples, "*.car.json"))
        {
            var name = Path.GetFileName(sample)[..^".car.json".Length];
            Shelf.Save(CarId.Read(name)!, await File.ReadAllTextAsync(sample));
        }

        await _app.StartAsync();
        Address = _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Chromium(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>Opens a window of a size.</summary>
    /// <param name="size">Width and height of the page, px.</param>
    /// <param name="theme">The look.</param>
    /// <param name="scripts">Whether scripts run.</param>
    /// <returns>The window; it fails the test on anything it asks of another machine and on any error of the console.</returns>
    public async Task<Window> OpenAsync((int Width, int Height) size, string theme = "paper", Scripts scripts = Scripts.On)
    {
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = Address,
            ViewportSize = new ViewportSize { Width = size.Width, Height = size.Height },
            JavaScriptEnabled = scripts == Scripts.On,
            ReducedMotion = ReducedMotion.Reduce,
        });
        await context.AddCookiesAsync([new Cookie { Name = "tickover-theme", Value = theme, Url = Address }]);
        return new Window(context, await context.NewPageAsync(), Address, scripts);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        if (_app is not null)
        {
            await _app.DisposeAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }

    private static string Chromium()
    {
        var named = Environment.GetEnvironmentVariable("TICKOVER_CHROMIUM");
        var path = string.IsNullOrEmpty(named) ? "/usr/bin/chromium" : named;
        return File.Exists(path)
            ? path
            : throw new FileNotFoundException($"No browser at {path}. Install the package chromium, or name one by TICKOVER_CHROMIUM.", path);
    }
}
