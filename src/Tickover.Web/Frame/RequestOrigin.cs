using Microsoft.Extensions.Primitives;

namespace Tickover.Web.Frame;

/// <summary>Which page a request says it was sent from, by the headers a page cannot set itself.</summary>
/// <remarks>
/// A browser puts Origin on every post, and on whatever one site asks of another by script; Sec-Fetch-Site comes on top of it
/// over TLS and on loopback (WHATWG Fetch, section 3.2; W3C Fetch Metadata). A program sends neither.
/// </remarks>
internal static class RequestOrigin
{
    /// <summary>Whether a header says that the request was sent by a page of this very server.</summary>
    public static bool IsOurs(HttpRequest request) =>
        !IsForeign(request) && (request.Headers.Origin.Count > 0 || Is(request.Headers["Sec-Fetch-Site"], "same-origin"));

    /// <summary>Whether a header says that the request was sent by a page from elsewhere.</summary>
    public static bool IsForeign(HttpRequest request)
    {
        var origin = request.Headers.Origin;
        var site = request.Headers["Sec-Fetch-Site"];
        return (origin.Count > 0 && !Is(origin, $"{request.Scheme}://{request.Host.Value}"))
            || (site.Count > 0 && !Is(site, "same-origin") && !Is(site, "none"));
    }

    private static bool Is(StringValues header, string expected) =>
        header.Count == 1 && string.Equals(header[0], expected, StringComparison.OrdinalIgnoreCase);
}
