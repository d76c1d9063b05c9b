using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Tickover.Web;
using Tickover.Web.Papers;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Browser.Tests;

/// <summary>The app on a free port with the samples taken in, and one browser for all tests of the assembly.</summary>
public sealed class Workshop : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-browser-").FullName;
    private readonly Dictionary<string, string> _visits = new(StringComparer.Ordinal);
    private WebApplication? _app;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Address of the app.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The cars' documents in the record.</summary>
    public ICarShelf Shelf => _app!.Services.GetRequiredService<ICarShelf>();

    /// <summary>The workshop's record, with the demonstration in it.</summary>
    public IRecord Record => _app!.Services.GetRequiredService<IRecord>();

    /// <summary>The PINs of those who sign.</summary>
    public IPins Pins => _app!.Services.GetRequiredService<IPins>();

    /// <summary>Address of the visit of a car of the demonstration.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The address.</returns>
    public string VisitOf(string car) => _visits[car];

    /// <summary>Puts the visits' numbers into an address.</summary>
    /// <param name="address">An address with {tern}, {osprey} or {gannet} in it.</param>
    /// <returns>The address as it is called.</returns>
    public string Filled(string address) => address
        .Replace("{tern}", VisitOf("Larkfield Tern 2800"), StringComparison.Ordinal)
        .Replace("{osprey}", VisitOf("Larkfield Osprey V8"), StringComparison.Ordinal)
        .Replace("{gannet}", VisitOf("Samphire Gannet 1500"), StringComparison.Ordinal);

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

        var documents = DemonstrationLoader.Documents(Repository.Samples)!;
        Assert.Null(await DemonstrationLoader.LoadAsync(Record, documents, DateOnly.FromDateTime(DateTime.Now)));
        foreach (var visit in await Record.OpenVisitsAsync())
        {
            _visits[visit.Car.Name] = $"/visits/{visit.Visit.Id}";
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
