namespace Tickover.Web.Frame;

/// <summary>What a browser needs to work without the server and to install the app: the service worker and the manifest.</summary>
internal static class OfflineFiles
{
    private const string Script = "js/sw.js";

    public static void MapOfflineFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sw.js", (PageAssets assets, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-store";
            return Results.Text(ServiceWorker(assets), "text/javascript; charset=utf-8");
        });
        routes.MapGet("/manifest.webmanifest", (PageAssets assets, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-cache";
            return Results.Json(Manifest(assets), contentType: "application/manifest+json");
        });
    }

    // A worker is renewed when its bytes differ: the version and the list of files are part of them.
    private static string ServiceWorker(PageAssets assets) =>
        System.Text.Encoding.UTF8.GetString(assets.Find(Script)!.Content.Span)
            .Replace("{version}", assets.Version, StringComparison.Ordinal)
            .Replace("{files}", string.Join(' ', assets.Paths.Where(p => p is not Script).Select(assets.Url)), StringComparison.Ordinal);

    private static object Manifest(PageAssets assets) => new
    {
        name = "Tickover",
        short_name = "Tickover",
        description = "The workshop's cars, visits and readings",
        id = "/",
        start_url = "/",
        scope = "/",
        display = "standalone",
        lang = "en-GB",

        // The page's ground in the light called paper (--bg) and its marking-out blue (--mark).
        background_color = "#edf1ef",
        theme_color = "#2a2e9a",
        icons = new[]
        {
            new { src = assets.Url("icon.svg"), sizes = "any", type = "image/svg+xml", purpose = "any" },
            new { src = assets.Url("icons/icon-192.png"), sizes = "192x192", type = "image/png", purpose = "any" },
            new { src = assets.Url("icons/icon-512.png"), sizes = "512x512", type = "image/png", purpose = "any" },
            new { src = assets.Url("icons/maskable-192.png"), sizes = "192x192", type = "image/png", purpose = "maskable" },
            new { src = assets.Url("icons/maskable-512.png"), sizes = "512x512", type = "image/png", purpose = "maskable" },
        },
    };
}
