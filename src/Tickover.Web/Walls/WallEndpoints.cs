using Tickover.Web.Frame;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Walls;

/// <summary>Surveys of walls and leak tests: dropped and looked at.</summary>
internal static class WallEndpoints
{
    private static readonly string[] NotKept = ["Documents are in hand while the server runs; nothing of them is kept. Drop the file again."];

    public static void MapWalls(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/walls", (string? visit, WallDesk desk) => Pages.Show<WallsPage>(new { Desk = desk, Visit = Id.Read<Visit>(visit) }));
        routes.MapPost("/walls", TakeAsync).GuardForm();
        routes.MapGet("/walls/{id}", (string id, string? cell, string? visit, WallDesk desk) => ShowWall(desk, id, cell, Id.Read<Visit>(visit)));
        routes.MapGet("/leaks/{id}", (string id, string? visit, WallDesk desk) => desk.Leaks.Find(id) is { } leak
            ? Pages.Show<LeakPage>(new { Leak = leak, Visit = Id.Read<Visit>(visit) })
            : Pages.Error(StatusCodes.Status404NotFound, "That leak test is not in hand.", NotKept, WallAddress.List(Id.Read<Visit>(visit)), "Walls"));
    }

    private static IResult ShowWall(WallDesk desk, string id, string? cell, Id<Visit>? visit)
    {
        if (desk.Walls.Find(id) is not { } wall)
        {
            return Pages.Error(StatusCodes.Status404NotFound, "That survey is not in hand.", NotKept, WallAddress.List(visit), "Walls");
        }

        var chosen = wall.Survey.Cells.FirstOrDefault(c => string.Equals(c.Name, cell, StringComparison.OrdinalIgnoreCase));
        return cell is not null && chosen is null
            ? Pages.Error(StatusCodes.Status400BadRequest, "There is no such cell.", ["cell: a letter from the left and a number from the top, such as C4, inside the outline."], WallAddress.Wall(id, visit), "Survey")
            : Pages.Show<WallPage>(new { Id = id, Wall = wall, Chosen = chosen, Visit = visit });
    }

    private static async Task<IResult> TakeAsync(HttpRequest request, WallDesk desk)
    {
        var form = await request.ReadFormAsync();
        var text = form["document"].ToString();
        if (form.Files["file"] is { Length: > 0 and <= WallDocument.LargestBytes } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = await reader.ReadToEndAsync();
        }

        var visit = Id.Read<Visit>(form["visit"]);
        return text.Contains(LeakDocument.Format, StringComparison.Ordinal) ? TakeLeak(desk, text, visit) : TakeWall(desk, text, visit);
    }

    private static IResult TakeWall(WallDesk desk, string text, Id<Visit>? visit)
    {
        var reading = WallDocument.Read(text);
        return reading.Survey is { } survey
            ? Results.Redirect(WallAddress.Wall(desk.Walls.Take(text, WallAnalyst.Of(survey)), visit))
            : Refused(desk, text, reading.Faults, visit);
    }

    private static IResult TakeLeak(WallDesk desk, string text, Id<Visit>? visit)
    {
        var reading = LeakDocument.Read(text);
        return reading.Sheet is { } sheet
            ? Results.Redirect(WallAddress.Leak(desk.Leaks.Take(text, LeakAnalyst.Of(sheet)), visit))
            : Refused(desk, text, reading.Faults, visit);
    }

    private static IResult Refused(WallDesk desk, string text, IReadOnlyList<Workshop.Cars.Fault> faults, Id<Visit>? visit) =>
        Pages.Show<WallsPage>(new { Desk = desk, Text = text, Faults = faults, Visit = visit }, StatusCodes.Status422UnprocessableEntity);
}
