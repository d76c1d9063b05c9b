using Tickover.Web.Frame;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>Says who is at work on this tablet: no proof, only whose initials stand beside what is entered. Signing asks for the PIN.</summary>
internal static class WhoEndpoints
{
    public const string Cookie = "tickover-who";

    private static readonly TimeSpan Kept = TimeSpan.FromHours(14);

    public static void MapWho(this IEndpointRouteBuilder routes) => routes.MapPost("/who", async (HttpContext context, IRecord record) =>
    {
        var form = await context.Request.ReadFormAsync();
        var workshop = await record.WorkshopAsync(context.RequestAborted);
        if (Id.Read<Person>(form["person"]) is { } person && workshop.People.Any(p => p.Id == person && !p.Removed))
        {
            context.Response.Cookies.Append(Cookie, person.ToString(), new CookieOptions { MaxAge = Kept, HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true });
        }
        else
        {
            context.Response.Cookies.Delete(Cookie);
        }

        return Results.Redirect(Pages.Back(form["back"]));
    }).GuardForm();
}
