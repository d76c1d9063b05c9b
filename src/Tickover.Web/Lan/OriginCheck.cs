using Tickover.Web.Frame;

namespace Tickover.Web.Lan;

/// <summary>Turns away what a page from elsewhere makes a browser send: whatever changes something, and whatever stays open.</summary>
internal static class OriginCheck
{
    public static Task InvokeAsync(HttpContext context, RequestDelegate next) =>
        IsGuarded(context) && RequestOrigin.IsForeign(context.Request)
            ? Faults.SayAsync(context, StatusCodes.Status403Forbidden, "This was sent by a page from elsewhere.", "Nothing was changed. Open the page here and send it from there.")
            : next(context);

    private static bool IsGuarded(HttpContext context)
    {
        var request = context.Request;
        return !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsOptions(request.Method))
            || context.WebSockets.IsWebSocketRequest
            || request.Headers.Upgrade.Count > 0
            || request.Headers.Accept.ToString().Contains("text/event-stream", StringComparison.OrdinalIgnoreCase);
    }
}
