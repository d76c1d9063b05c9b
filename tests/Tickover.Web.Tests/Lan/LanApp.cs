using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Tickover.Web.Lan;

namespace Tickover.Web.Tests.Lan;

/// <summary>The whole app with its door to the network open, in memory or on a real port; visitors say which address they come from.</summary>
internal sealed class LanApp : IAsyncDisposable
{
    public const string From = "Test-From";
    private readonly WebApplication _app;
    private readonly string? _ownFolder;

    private LanApp(WebApplication app, string folder, bool owns, Clock? clock, InventedMachine machine)
    {
        (_app, Folder, Clock, Machine) = (app, folder, clock ?? new Clock(), machine);
        _ownFolder = owns ? folder : null;
    }

    public string Folder { get; }

    public Clock Clock { get; }

    public InventedMachine Machine { get; }

    public string DevicesFile => Path.Combine(Folder, ".tickover", "lan", "devices.json");

    public IServiceProvider Services => _app.Services;

    public int Port => new Uri(_app.Urls.First()).Port;

    public static Task<LanApp> StartAsync(LanOptions? lan = null, string? folder = null, Clock? clock = null, Action<WebApplication>? map = null) =>
        StartAsync(lan ?? new LanOptions(), folder, clock ?? new Clock(), map, builder => builder.WebHost.UseTestServer());

    /// <summary>On a port, with the real clock: the other side of TLS goes by that too.</summary>
    public static Task<LanApp> StartOnPortAsync(Action<WebApplication>? map = null) => StartAsync(new LanOptions(), null, null, map, _ => { });

    /// <summary>Someone at an address, with a browser's cookies; "" is the machine itself.</summary>
    public Visitor Visitor(string from, string origin = "https://saltmarsh.local") => new(_app.GetTestServer().CreateHandler(), from, new Uri(origin));

    /// <summary>A code as the machine's own page shows it.</summary>
    public async Task<string> CodeAsync()
    {
        using var machine = Visitor("", "http://localhost");
        using var page = await machine.PostFormAsync("/tablets", "/tablets/code");
        var document = await TestApp.ParseAsync(page);
        return document.QuerySelector("p.code")!.TextContent.Trim();
    }

    /// <summary>A tablet that was let in.</summary>
    public async Task<Visitor> PairedAsync(string name = "Bench tablet", string from = "192.168.7.20", string origin = "https://saltmarsh.local")
    {
        var tablet = Visitor(from, origin);
        using var answer = await tablet.PairAsync(name, await CodeAsync());
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return tablet;
    }

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        if (_ownFolder is not null)
        {
            Directory.Delete(_ownFolder, recursive: true);
        }
    }

    private static async Task<LanApp> StartAsync(LanOptions lan, string? folder, Clock? clock, Action<WebApplication>? map, Action<WebApplicationBuilder> host)
    {
        var data = folder ?? Directory.CreateTempSubdirectory("tickover-lan-").FullName;
        if (folder is null)
        {
            await BlankRecord.CopyToAsync(data);
        }

        var machine = new InventedMachine();
        var app = await WebApp.BuildAsync([], new WebAppOptions { DataFolder = data, SamplesFolder = Repository.Samples, Lan = lan, Address = "http://127.0.0.1:0" }, builder =>
        {
            host(builder);
            builder.Logging.ClearProviders();
            builder.Services.AddSingleton<IStartupFilter, Addressed>();
            builder.Services.AddSingleton<IMachine>(machine);
            builder.Services.AddSingleton(clock ?? TimeProvider.System);
        });
        map?.Invoke(app);
        await app.StartAsync();
        return new LanApp(app, data, folder is null, clock, machine);
    }

    /// <summary>Puts the address a visitor names in the place of the connection's.</summary>
    private sealed class Addressed : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, go) =>
            {
                if (context.Request.Headers[From] is [{ Length: > 0 } address])
                {
                    context.Connection.RemoteIpAddress = IPAddress.Parse(address);
                }

                return go(context);
            });
            next(app);
        };
    }
}
