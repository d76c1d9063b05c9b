using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Tickover.Web.Frame;

/// <summary>Answers of the page end points.</summary>
internal static class Pages
{
    /// <summary>Seconds for which a chosen look is kept: a year.</summary>
    private static readonly TimeSpan LookKept = TimeSpan.FromDays(365);

    public static IResult Show<TPage>(object parameters, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new RazorComponentResult<TPage>(parameters) { StatusCode = status };

    public static IResult NotFound(string problem, string whatToDo) =>
        Error(StatusCodes.Status404NotFound, problem, [whatToDo]);

    public static IResult Error(int status, string problem, IReadOnlyList<string> lines, string backTo = "/", string backWord = "Shop") =>
        Show<ErrorPage>(new { Problem = problem, Lines = lines, BackTo = backTo, BackWord = backWord }, status);

    /// <summary>Where a form says to go back to, if that is a page of ours.</summary>
    public static string Back(string? asked, string otherwise = "/") =>
        asked is { Length: > 0 } && asked[0] == '/' && !asked.StartsWith("//", StringComparison.Ordinal) && !asked.Contains('\\') ? asked : otherwise;

    public static void MapFrame(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/assets/{version}/{**path}", (string version, string path, PageAssets assets, HttpContext context) =>
        {
            if (assets.Find(path) is not { } asset)
            {
                return Results.NotFound();
            }

            // An address of an older release still answers, but nobody is to keep today's bytes under it.
            context.Response.Headers.CacheControl = string.Equals(version, assets.Version, StringComparison.Ordinal) ? "public, max-age=31536000, immutable" : "no-store";
            return Results.Bytes(asset.Content, asset.ContentType);
        });
        routes.MapPost("/theme", async (HttpContext context) =>
        {
            var form = await context.Request.ReadFormAsync();
            if (Theme.Known(form["theme"]) is { } look)
            {
                context.Response.Cookies.Append(
                    Theme.Cookie, look, new CookieOptions { MaxAge = LookKept, HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true });
            }

            return Results.Redirect(Back(form["back"]));
        }).GuardForm();
    }
}
