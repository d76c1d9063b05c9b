using Tickover.Web.Frame;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>Float levels and wear: dropped and looked at.</summary>
internal static class StripEndpoints
{
    public static void MapStripDown(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<StripDesk>().Intake);
        routes.MapGet("/levels/{id}", (string id, string? visit, StripDesk desk) =>
            desk.Levels.Find(id) is { } level ? Pages.Show<LevelPage>(new { Level = level, Visit = Id.Read<Visit>(visit) }) : intake.Missing(visit));
        routes.MapGet("/wear/{id}", (string id, string? visit, StripDesk desk) =>
            desk.Wear.Find(id) is { } wear ? Pages.Show<WearPage>(new { Wear = wear, Visit = Id.Read<Visit>(visit) }) : intake.Missing(visit));
    }
}
