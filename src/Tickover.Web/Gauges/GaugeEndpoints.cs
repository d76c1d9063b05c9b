using Tickover.Web.Frame;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>Two linked tanks and their gauge: dropped, driven and looked at.</summary>
internal static class GaugeEndpoints
{
    public static void MapGauges(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/gauges", (string? visit, GaugesInHand gauges) => Pages.Show<GaugesPage>(new { gauges.Samples, Visit = Id.Read<Visit>(visit) }));
        routes.MapPost("/gauges", TakeAsync).GuardForm();
        routes.MapGet("/gauges/{id}", (string id, string? road, string? remedy, string? visit, GaugesInHand gauges) => Show(id, (road, remedy), Id.Read<Visit>(visit), gauges));
    }

    private static IResult Show(string id, (string? Road, string? Remedy) asked, Id<Visit>? visit, GaugesInHand gauges)
    {
        Manoeuvre? road = Enum.TryParse<Manoeuvre>(asked.Road, out var known) && Enum.IsDefined(known) ? known : null;
        var remedy = Enum.TryParse<GaugeRemedy>(asked.Remedy, out var wanted) && Enum.IsDefined(wanted) ? wanted : GaugeRemedy.None;
        if (gauges.Find(id, road) is not { } analysis)
        {
            return Pages.Error(StatusCodes.Status404NotFound, "That gauge is not in hand.", ["Documents are in hand while the server runs; nothing of them is kept. Drop the file again."], GaugeAddress.List(visit), "Gauges");
        }

        var film = remedy == GaugeRemedy.None ? analysis.Film : GaugeAnalyst.Film(analysis.Setup, remedy);
        return Pages.Show<GaugePage>(new { Place = new GaugePlace(id, analysis, film, road, remedy, visit) });
    }

    private static async Task<IResult> TakeAsync(HttpRequest request, GaugesInHand gauges)
    {
        var form = await request.ReadFormAsync();
        var text = form["document"].ToString();
        if (form.Files["file"] is { Length: > 0 and <= GaugeDocument.LargestBytes } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = await reader.ReadToEndAsync();
        }

        var visit = Id.Read<Visit>(form["visit"]);
        var reading = GaugeDocument.Read(text);
        return reading.Setup is { } setup
            ? Results.Redirect(GaugeAddress.Of(gauges.Take(setup), visit))
            : Pages.Show<GaugesPage>(new { gauges.Samples, Text = text, reading.Faults, Visit = visit }, StatusCodes.Status422UnprocessableEntity);
    }
}
