using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Tickover.Web.Api;
using Tickover.Web.Cars;
using Tickover.Web.Documents;
using Tickover.Web.Frame;
using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web;

/// <summary>The tablet app and the HTTP API.</summary>
public static class WebApp
{
    /// <summary>Puts the app together; the caller starts it.</summary>
    /// <param name="args">Settings of the host as on a command line; usually none.</param>
    /// <param name="options">Folders and address.</param>
    /// <returns>The app, not yet started.</returns>
    public static WebApplication Build(string[] args, WebAppOptions options) => Build(args, options, _ => { });

    /// <summary>Puts the app together with a say in the host, for tests that run without a network.</summary>
    /// <param name="args">Settings of the host.</param>
    /// <param name="options">Folders and address.</param>
    /// <param name="configure">Called before the app is built.</param>
    /// <returns>The app, not yet started.</returns>
    internal static WebApplication Build(string[] args, WebAppOptions options, Action<WebApplicationBuilder> configure)
    {
        ArgumentNullException.ThrowIfNull(options);
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            ApplicationName = typeof(WebApp).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.WebHost.UseUrls(options.Address);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = ApiEndpoints.LongestBody;
        });
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        AddServices(builder.Services, options);
        configure(builder);
        var app = builder.Build();
        app.UseHostFiltering();
        app.UseResponseCompression();
        app.UseSecurityHeaders();
        app.UseFaultPages();
        app.MapFrame();
        app.MapCars();
        app.MapDescription();
        app.MapMixture();
        app.MapDocuments();
        app.MapApi();
        return app;
    }

    private static void AddServices(IServiceCollection services, WebAppOptions options)
    {
        services.AddRazorComponents();
        services.AddAntiforgery(a => a.Cookie.Name = "tickover-form");
        services.AddProblemDetails();
        services.AddResponseCompression();

        // The keys lie with the data, so that a form opened before a restart is still good after it.
        services.AddDataProtection()
            .SetApplicationName("Tickover")
            .PersistKeysToFileSystem(Directory.CreateDirectory(Path.Combine(options.DataFolder, ".tickover", "keys")));
        services.Configure<HostFilteringOptions>(filter => filter.AllowedHosts = [.. Hosts(options.Address)]);
        services.ConfigureHttpJsonOptions(json => json.SerializerOptions.WriteIndented = false);
        services.AddSingleton(options);
        services.AddSingleton<PageAssets>();
        services.AddSingleton<ICarShelf>(new CarFolder(options.DataFolder));
        services.AddSingleton<Samples>();
        services.AddSingleton<Documentation>();
        services.AddSingleton<SurveyCache>();
        services.AddSingleton<BenchDesk>();
        services.AddSingleton<CarRows>();
    }

    // A page from elsewhere whose name was pointed at this machine must not reach the app: on loopback only loopback
    // names are answered. Who opens the app to the network names the address to answer to, or takes any.
    private static IEnumerable<string> Hosts(string address)
    {
        var host = new Uri(address.Replace("//*", "//0.0.0.0", StringComparison.Ordinal).Replace("//+", "//0.0.0.0", StringComparison.Ordinal)).Host;
        var any = IPAddress.TryParse(host.Trim('[', ']'), out var ip) && (ip.Equals(IPAddress.Any) || ip.Equals(IPAddress.IPv6Any));
        return any ? ["*"] : [host, "localhost", "127.0.0.1", "[::1]"];
    }
}
