namespace Tickover.Web.Frame;

/// <summary>Says to the browser that a page is made of this server's files alone.</summary>
internal static class SecurityHeaders
{
    // data: for pictures only: the smooth field of a map is drawn into the SVG as a small picture. blob: for a photograph not yet sent.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; "
        + "worker-src 'self'; manifest-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    // Only names that browsers know: an unknown one, such as bluetooth, is an error in the console of every page.
    private const string Permissions =
        "camera=(self), screen-wake-lock=(self), microphone=(), geolocation=(), payment=(), usb=(), serial=(), display-capture=()";

    // A day only, and only where plain http is not offered too: the name of a machine may serve other things tomorrow.
    private const string TlsOnly = "max-age=86400";

    public static void UseSecurityHeaders(this IApplicationBuilder app, WebAppOptions options) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = Permissions;
        if (context.Request.IsHttps && options.Lan is { PlainHttp: false })
        {
            headers.StrictTransportSecurity = TlsOnly;
        }

        return next(context);
    });
}
