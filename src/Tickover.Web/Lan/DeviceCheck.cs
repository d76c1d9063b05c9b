using System.Net;

namespace Tickover.Web.Lan;

/// <summary>Establishes what a request comes from, before anything else sees it.</summary>
internal sealed class DeviceCheck(DeviceRegister register, IMachine machine, WebAppOptions options)
{
    /// <summary>Sets the device of the request, where it is known, and goes on; closes the request when its tablet is taken off.</summary>
    public async Task InvokeAsync(HttpContext context, RequestDelegate next)
    {
        if (IsThisMachine(context))
        {
            context.Features.Set(RequestDevice.ThisMachine);
            await next(context);
            return;
        }

        if (Recognise(context) is not { } recognised)
        {
            await next(context);
            return;
        }

        context.Features.Set(recognised.Device);
        if (recognised.NewToken is { } token)
        {
            DeviceCookie.Give(context, token);
        }

        await using var closing = register.TakenOff(recognised.Device.Id).Register(context.Abort);
        await next(context);
    }

    /// <summary>The address of whoever asks; IPv4 in its own form.</summary>
    public static IPAddress? Caller(HttpContext context) =>
        context.Connection.RemoteIpAddress is { IsIPv4MappedToIPv6: true } mapped ? mapped.MapToIPv4() : context.Connection.RemoteIpAddress;

    // No address at all is a server without a network, in memory. A proxy on this machine speaks for somebody else.
    private static bool IsThisMachine(HttpContext context) =>
        (Caller(context) is not { } address || IPAddress.IsLoopback(address))
        && context.Request.Headers is { } headers && !headers.ContainsKey("Forwarded") && !headers.ContainsKey("X-Forwarded-For");

    private Recognised? Recognise(HttpContext context)
    {
        var request = context.Request;
        return options.Lan is { } lan && (request.IsHttps || lan.PlainHttp)
            && Caller(context) is { } caller && (IPAddress.IsLoopback(caller) || PrivateNetworks.IsNear(caller, machine))
            && DeviceCookie.Read(request) is { Length: > 0 } token
            ? register.Recognise(token, HttpMethods.IsGet(request.Method) && request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase))
            : null;
    }
}
