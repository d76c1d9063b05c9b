using Microsoft.AspNetCore.DataProtection;
using Tickover.Web.Api;
using Tickover.Web.Balance;
using Tickover.Web.Cars;
using Tickover.Web.Documents;
using Tickover.Web.FaultFinding;
using Tickover.Web.Frame;
using Tickover.Web.Gauges;
using Tickover.Web.Lan;
using Tickover.Web.Linkages;
using Tickover.Web.Mixture;
using Tickover.Web.RoadLogs;
using Tickover.Web.StripDown;
using Tickover.Web.Supply;
using Tickover.Web.Tanks;
using Tickover.Web.Visits;
using Tickover.Web.Walls;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits;

namespace Tickover.Web;

/// <summary>The tablet app and the HTTP API.</summary>
public static class WebApp
{
    /// <summary>Puts the app together; the caller starts it.</summary>
    /// <param name="args">Settings of the host as on a command line; usually none.</param>
    /// <param name="options">Folders and address.</param>
    /// <returns>The app, not yet started.</returns>
    /// <exception cref="RecordTroubleException">The workshop's record cannot be opened; the message says why and what to do.</exception>
    public static Task<WebApplication> BuildAsync(string[] args, WebAppOptions options) => BuildAsync(args, options, _ => { });

    /// <summary>Puts the app together with a say in the host, for tests that run without a network.</summary>
    /// <param name="args">Settings of the host.</param>
    /// <param name="options">Folders and address.</param>
    /// <param name="configure">Called before the app is built.</param>
    /// <returns>The app, not yet started.</returns>
    internal static async Task<WebApplication> BuildAsync(string[] args, WebAppOptions options, Action<WebApplicationBuilder> configure)
    {
        ArgumentNullException.ThrowIfNull(options);
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            ApplicationName = typeof(WebApp).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.Listen(options);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = ApiEndpoints.LongestBody;
        });
        // Warnings that say nothing new: pages with forms are never cached anyway, and the keys sign forms of a bench, no more.
        builder.Logging
            .AddFilter("Microsoft.AspNetCore", LogLevel.Warning)
            .AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.Error)
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        AddServices(builder.Services, options);
        builder.Services.AddRecord(await OpenRecord.OpenAsync(options), options);
        configure(builder);
        var app = builder.Build();
        app.UseResponseCompression();
        app.UseSecurityHeaders(options);
        app.UseHostCheck(options);
        app.UseFaultPages();
        app.UseLan();
        app.MapFrame();
        app.MapTablets();
        app.MapShop();
        app.MapVisits();
        app.MapOfflineFiles();
        app.MapCars();
        app.MapDescription();
        app.MapMixture();
        app.MapDocuments();
        app.MapApi();
        app.MapApiDescription();
        return app;
    }

    private static void AddServices(IServiceCollection services, WebAppOptions options)
    {
        services.AddRazorComponents();
        services.AddAntiforgery(a =>
        {
            a.Cookie.Name = "tickover-form";
            a.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
        services.AddProblemDetails();
        services.AddApiDescription();
        services.AddResponseCompression();

        // The keys lie with the data, so that a form opened before a restart is still good after it.
        services.AddDataProtection()
            .SetApplicationName("Tickover")
            .PersistKeysToFileSystem(Directory.CreateDirectory(Path.Combine(options.DataFolder, ".tickover", "keys")));
        services.ConfigureHttpJsonOptions(json => RecordKinds.WithConverters(json.SerializerOptions).WriteIndented = false);
        services.AddSingleton(options);
        services.AddLan(options);
        services.AddSingleton<PageAssets>();
        services.AddSingleton<Samples>();
        services.AddSingleton<PracticeEngines>();
        services.AddSingleton<Documentation>();
        services.AddSingleton<SurveyCache>();
        services.AddSingleton<BenchDesk>();
        services.AddSingleton<Drawings>();
        services.AddRoadLogs();
        services.AddWorksheets();
        services.AddSingleton<TanksInHand>();
        services.AddSingleton<SuppliesInHand>();
        services.AddSingleton<LinkagesInHand>();
        services.AddSingleton<WallDesk>();
        services.AddSingleton<StripDesk>();
        services.AddSingleton<GaugesInHand>();
        services.AddSingleton<FaultTables>();
        services.AddHostedService<FirstSurveys>();
        services.AddSingleton<CarRows>();
        services.AddSingleton<IMixtureAdvice, MixtureAdvice>();
    }
}
