namespace Tickover.Web.Lan;

/// <summary>Puts together what lets tablets in.</summary>
internal static class LanServices
{
    public static void AddLan(this IServiceCollection services)
    {
        services.AddHttpContextAccessor();
        services.AddSingleton<IDeviceContext, DeviceContext>();
    }
}
