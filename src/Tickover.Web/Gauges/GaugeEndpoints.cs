using Tickover.Web.Frame;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>Gauges on the road: dropped, looked at and played.</summary>
internal static class GaugeEndpoints
{
    public static void MapGauges(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<GaugesInHand>().Intake);
        routes.MapGet("/gauges/{id}", (string id, string? road, string? remedy, string? visit, GaugesInHand gauges) =>
            gauges.Stories.Find(id) is { } story ? Show(id, story, road, remedy, Id.Read<Visit>(visit)) : intake.Missing(visit));
    }

    private static IResult Show(string id, GaugeStory story, string? road, string? remedy, Id<Visit>? visit)
    {
        var known = road is not null && GaugeRoads.Known.ContainsKey(road) ? road : null;
        var chosen = remedy ?? GaugeRemedies.AsFound;
        var analysis = GaugeAnalyst.Of(GaugeRoads.On(story, known), chosen);
        return Pages.Show<GaugePage>(new { Place = new GaugePlace(id, story, known, chosen, analysis, visit) });
    }
}
