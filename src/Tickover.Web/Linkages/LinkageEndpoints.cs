using System.Globalization;
using Tickover.Reports.Linkages;
using Tickover.Web.Frame;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Linkages;

/// <summary>Throttle linkages: dropped, looked at and moved.</summary>
internal static class LinkageEndpoints
{
    private const string FragmentHeader = "X-Tickover-Fragment";
    private const int UsualDown = 25;

    public static void MapLinkages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/linkages", (string? visit, LinkagesInHand linkages) => Pages.Show<LinkagesPage>(new { linkages.Samples, Visit = Id.Read<Visit>(visit) }));
        routes.MapPost("/linkages", TakeAsync).GuardForm();
        routes.MapGet("/linkages/{id}", (string id, string? down, string? set, string? visit, HttpContext context, LinkagesInHand linkages) =>
            linkages.Find(id) is { } linkage
                ? Show(new LinkagePlace(linkage, UsualDown, set is "1" ? LinkageSetting.AsAdvised : LinkageSetting.AsFound, Id.Read<Visit>(visit)), down, context)
                : Pages.Error(StatusCodes.Status404NotFound, "That linkage is not in hand.", ["Documents are in hand while the server runs; nothing of them is kept. Drop the file again."], LinkageAddress.List(Id.Read<Visit>(visit)), "Linkages"));
    }

    private static IResult Show(LinkagePlace usual, string? down, HttpContext context)
    {
        var percent = usual.Down;
        if (down is not null && !(int.TryParse(down, NumberStyles.None, CultureInfo.InvariantCulture, out percent) && percent <= 100))
        {
            return Pages.Error(StatusCodes.Status400BadRequest, "That place cannot be looked up.", ["down: the pedal is 0 to 100 per cent down, in whole numbers."], LinkageAddress.Of(usual.Linkage.Id, usual.Visit), "Linkage");
        }

        var place = usual with { Down = percent };
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.Vary = FragmentHeader;
        return context.Request.Headers.ContainsKey(FragmentHeader)
            ? Pages.Show<LinkageDrawing>(new { Place = place })
            : Pages.Show<LinkagePage>(new { Place = place });
    }

    private static async Task<IResult> TakeAsync(HttpRequest request, LinkagesInHand linkages)
    {
        var form = await request.ReadFormAsync();
        var text = form["document"].ToString();
        if (form.Files["file"] is { Length: > 0 and <= LinkageDocument.LargestBytes } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = await reader.ReadToEndAsync();
        }

        var visit = Id.Read<Visit>(form["visit"]);
        var reading = LinkageDocument.Read(text);
        return reading.Linkage is { } linkage
            ? Results.Redirect(LinkageAddress.Of(linkages.Take(linkage).Id, visit))
            : Pages.Show<LinkagesPage>(new { linkages.Samples, Text = text, reading.Faults, Visit = visit }, StatusCodes.Status422UnprocessableEntity);
    }
}
