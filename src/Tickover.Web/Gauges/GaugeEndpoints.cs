using Tickover.Web.Frame;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>Gauges on the road: dropped, looked at and played.</summary>
internal static class GaugeEndpoints
{
    public static void MapGauges(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/gauges", (string? visit, GaugesInHand gauges) => Pages.Show<GaugesPage>(new { gauges.Stories.Samples, Visit = Id.Read<Visit>(visit) }));
        routes.MapPost("/gauges", TakeAsync).GuardForm();
        routes.MapGet("/gauges/{id}", (string id, string? road, string? remedy, string? visit, GaugesInHand gauges) =>
            gauges.Stories.Find(id) is { } story
                ? Show(id, story, road, remedy, Id.Read<Visit>(visit))
                : Pages.Error(StatusCodes.Status404NotFound, "That gauge is not in hand.", ["Documents are in hand while the server runs; nothing of them is kept. Drop the file again."], GaugePlace.List(Id.Read<Visit>(visit)), "Gauges"));
    }

    private static IResult Show(string id, GaugeStory story, string? road, string? remedy, Id<Visit>? visit)
    {
        var known = road is not null && GaugeRoads.Known.ContainsKey(road) ? road : null;
        var chosen = remedy ?? GaugeRemedies.AsFound;
        var analysis = GaugeAnalyst.Of(GaugeRoads.On(story, known), chosen);
        return Pages.Show<GaugePage>(new { Place = new GaugePlace(id, story, known, chosen, analysis, visit) });
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
        return reading.Story is { } story
            ? Results.Redirect(GaugePlace.Of(gauges.Stories.Take(text, story), visit))
            : Pages.Show<GaugesPage>(new { gauges.Stories.Samples, Text = text, reading.Faults, Visit = visit }, StatusCodes.Status422UnprocessableEntity);
    }
}
