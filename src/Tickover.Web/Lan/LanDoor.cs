using Tickover.Web.Frame;

namespace Tickover.Web.Lan;

/// <summary>Lets in whoever may come in; tells the rest how to.</summary>
internal sealed class LanDoor(IMachine machine, WebAppOptions options)
{
    /// <summary>Where a tablet is paired.</summary>
    public const string PairPath = "/pair";

    /// <summary>Where a tablet is told to trust this server.</summary>
    public const string TrustPath = "/trust";

    /// <summary>The authority's certificate.</summary>
    public const string AuthorityPath = "/authority.crt";

    private const string AssetsPath = "/assets";

    /// <summary>Goes on, or answers 401 or 403 in plain words.</summary>
    public async Task InvokeAsync(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (context.Features.Get<RequestDevice>() is not null)
        {
            await next(context);
        }
        else if (DeviceCheck.Caller(context) is { } caller && !System.Net.IPAddress.IsLoopback(caller) && !PrivateNetworks.IsNear(caller, machine))
        {
            await Faults.SayAsync(context, StatusCodes.Status403Forbidden, "This server answers on the workshop's network only.", "Use it from there.");
        }
        else if (IsOpen(request))
        {
            await next(context);
        }
        else if (!MayUsePlainHttp(request) && request.Path == "/" && HttpMethods.IsGet(request.Method))
        {
            // Somebody typed the address without https.
            context.Response.Redirect(TrustPath);
        }
        else
        {
            context.Response.Headers.WWWAuthenticate = "Tickover-Pairing";
            await Faults.SayAsync(
                context, StatusCodes.Status401Unauthorized, "This tablet is not let in.", $"Pair it with the server: open {PairPath} here, and Tablets on the machine the server runs on.");
        }
    }

    private bool IsOpen(HttpRequest request)
    {
        var isRead = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        return options.Lan is not null
            && ((isRead && (request.Path == TrustPath || request.Path == AuthorityPath || request.Path.StartsWithSegments(AssetsPath, StringComparison.Ordinal)))
                || ((isRead || HttpMethods.IsPost(request.Method)) && request.Path == PairPath && MayUsePlainHttp(request)));
    }

    private bool MayUsePlainHttp(HttpRequest request) => request.IsHttps || options.Lan is { PlainHttp: true };
}
