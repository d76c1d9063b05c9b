namespace Tickover.Web.Lan;

/// <summary>Establishes what a request comes from, before anything else sees it.</summary>
internal static class DeviceCheck
{
    public static void UseDevices(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Features.Set(RequestDevice.ThisMachine);
        return next(context);
    });
}
