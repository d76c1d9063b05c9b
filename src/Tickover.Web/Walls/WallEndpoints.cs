using Tickover.Web.Frame;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Walls;

/// <summary>Surveys of walls and leak tests: dropped and looked at.</summary>
internal static class WallEndpoints
{
    public static void MapWalls(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<WallDesk>().Intake);
        routes.MapGet("/walls/{id}", (string id, string? cell, string? visit, WallDesk desk) =>
            desk.Walls.Find(id) is { } wall ? Show(wall, id, cell, Id.Read<Visit>(visit)) : intake.Missing(visit));
        routes.MapGet("/leaks/{id}", (string id, string? visit, WallDesk desk) =>
            desk.Leaks.Find(id) is { } leak ? Pages.Show<LeakPage>(new { Leak = leak, Visit = Id.Read<Visit>(visit) }) : intake.Missing(visit));
    }

    private static IResult Show(WallAnalysis wall, string id, string? cell, Id<Visit>? visit)
    {
        var chosen = wall.Survey.Cells.FirstOrDefault(c => string.Equals(c.Name, cell, StringComparison.OrdinalIgnoreCase));
        return cell is not null && chosen is null
            ? Pages.Error(StatusCodes.Status400BadRequest, "There is no such cell.", ["cell: a letter from the left and a number from the top, such as C4, inside the outline."], WallAddress.Of(id, visit), "Survey")
            : Pages.Show<WallPage>(new { Id = id, Wall = wall, Chosen = chosen, Visit = visit });
    }
}
