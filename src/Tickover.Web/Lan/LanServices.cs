using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Tickover.Web.Lan;

/// <summary>Puts together what lets tablets in.</summary>
internal static class LanServices
{
    private const long MostConnections = 2000;

    public static void AddLan(this IServiceCollection services, WebAppOptions options)
    {
        var folder = Path.Combine(options.DataFolder, ".tickover", "lan");
        services.AddHttpContextAccessor();
        services.TryAddSingleton(options.Clock);
        services.AddSingleton<IDeviceContext, DeviceContext>();
        services.AddSingleton<IMachine, Machine>();
        services.AddSingleton(_ => new DeviceFile(folder));
        services.AddSingleton<DeviceRegister>();
        services.AddSingleton<PairingCodes>();
        services.AddSingleton(s => new LanAuthority(folder, s.GetRequiredService<IMachine>(), s.GetRequiredService<TimeProvider>()));
        services.AddSingleton<TabletsDesk>();
        services.AddSingleton<DeviceCheck>();
        services.AddSingleton<LanDoor>();
        services.AddHostedService<RevocationWatch>();
        services.AddRateLimiter(LanLimits.Set);
    }

    /// <summary>Listens on this machine alone, or on the network too.</summary>
    public static void Listen(this WebApplicationBuilder builder, WebAppOptions options)
    {
        var address = new Uri(options.Address);
        if (!address.IsLoopback)
        {
            throw new ArgumentException($"Address {options.Address}: a loopback address is expected; the network is let in by {nameof(WebAppOptions.Lan)}.", nameof(options));
        }

        if (options.Lan is null)
        {
            builder.WebHost.UseUrls(options.Address);
            return;
        }

        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Limits.MaxConcurrentConnections = MostConnections;
            kestrel.ListenToNetwork(address.Port, kestrel.ApplicationServices.GetRequiredService<LanAuthority>);
        });
    }

    /// <summary>The door: who is it, was it sent from here, is it too much, may it come in.</summary>
    public static void UseLan(this WebApplication app)
    {
        var check = app.Services.GetRequiredService<DeviceCheck>();
        var door = app.Services.GetRequiredService<LanDoor>();
        app.Use(check.InvokeAsync);
        app.Use(OriginCheck.InvokeAsync);
        app.UseRateLimiter();
        app.Use(door.InvokeAsync);
    }
}
