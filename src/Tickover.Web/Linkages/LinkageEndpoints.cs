using System.Globalization;
using Tickover.Reports.Linkages;
using Tickover.Web.Frame;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Linkages;

/// <summary>Throttle linkages: dropped, looked at and moved.</summary>
internal static class LinkageEndpoints
{
    private const string FragmentHeader = "X-Tickover-Fragment";
    private const int UsualDown = 25;

    public static void MapLinkages(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<LinkagesInHand>().Intake);
        routes.MapGet("/linkages/{id}", (string id, string? down, string? set, string? visit, HttpContext context, LinkagesInHand linkages) =>
            linkages.Linkages.Find(id) is { } linkage
                ? Show(new LinkagePlace(id, linkage.Analysis, UsualDown, set is "1" ? LinkageSetting.AsAdvised : LinkageSetting.AsFound, Id.Read<Visit>(visit)), down, context)
                : intake.Missing(visit));
    }

    private static IResult Show(LinkagePlace usual, string? down, HttpContext context)
    {
        var percent = usual.Down;
        if (down is not null && !(int.TryParse(down, NumberStyles.None, CultureInfo.InvariantCulture, out percent) && percent <= 100))
        {
            return Pages.Error(StatusCodes.Status400BadRequest, "That place cannot be looked up.", ["down: the pedal is 0 to 100 per cent down, in whole numbers."], IntakeAddress.Of($"/linkages/{usual.Id}", usual.Visit), "Linkage");
        }

        var place = usual with { Down = percent };
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.Vary = FragmentHeader;
        return context.Request.Headers.ContainsKey(FragmentHeader)
            ? Pages.Show<LinkageDrawing>(new { Place = place })
            : Pages.Show<LinkagePage>(new { Place = place });
    }
}
