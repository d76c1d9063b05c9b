namespace Tickover.Web.Frame;

/// <summary>Says to the browser that a page is made of this server's files alone.</summary>
internal static class SecurityHeaders
{
    // data: for pictures only: the smooth field of a map is drawn into the SVG as a small picture.
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'";

    public static void UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        return next(context);
    });
}
