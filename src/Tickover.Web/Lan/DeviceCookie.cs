namespace Tickover.Web.Lan;

/// <summary>The cookie by which a paired tablet is known.</summary>
internal static class DeviceCookie
{
    // The prefix makes the browser refuse the cookie from anywhere but this host over TLS (IETF RFC 6265bis, section 4.1.3.2).
    private const string OverTls = "__Host-tickover-device";
    private const string OverPlainHttp = "tickover-device";

    /// <summary>The token a request came with, if any.</summary>
    public static string? Read(HttpRequest request) => request.Cookies[Name(request)];

    /// <summary>Gives the tablet its token.</summary>
    public static void Give(HttpContext context, string token) =>
        context.Response.Cookies.Append(Name(context.Request), token, Options(context.Request, DeviceRegister.IdleEnd));

    /// <summary>Takes the token away.</summary>
    public static void Take(HttpContext context) =>
        context.Response.Cookies.Delete(Name(context.Request), Options(context.Request, maxAge: null));

    private static string Name(HttpRequest request) => request.IsHttps ? OverTls : OverPlainHttp;

    private static CookieOptions Options(HttpRequest request, TimeSpan? maxAge) => new()
    {
        HttpOnly = true,
        Secure = request.IsHttps,
        SameSite = SameSiteMode.Strict,
        Path = "/",
        MaxAge = maxAge,
        IsEssential = true,
    };
}
