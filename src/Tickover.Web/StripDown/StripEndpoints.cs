using Tickover.Web.Frame;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>Float levels and wear: dropped and looked at.</summary>
internal static class StripEndpoints
{
    private const int LargestBytes = 1_000_000;

    private static readonly string[] NotKept = ["Sheets are in hand while the server runs; nothing of them is kept here. Open it from the visit it was kept on, or drop the file again."];

    public static void MapStripDown(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/strip-down", (string? visit, StripDesk desk) => Pages.Show<StripPage>(new { Desk = desk, Visit = Id.Read<Visit>(visit) }));
        routes.MapPost("/strip-down", TakeAsync).GuardForm();
        routes.MapGet("/levels/{id}", (string id, string? visit, StripDesk desk) => desk.Levels.Find(id) is { } level
            ? Pages.Show<LevelPage>(new { Level = level, Visit = Id.Read<Visit>(visit) })
            : Missing(visit));
        routes.MapGet("/wear/{id}", (string id, string? visit, StripDesk desk) => desk.Wear.Find(id) is { } wear
            ? Pages.Show<WearPage>(new { Wear = wear, Visit = Id.Read<Visit>(visit) })
            : Missing(visit));
    }

    private static IResult Missing(string? visit) => Pages.Error(StatusCodes.Status404NotFound, "That sheet is not in hand.", NotKept, StripAddress.List(Id.Read<Visit>(visit)), "Levels and wear");

    private static async Task<IResult> TakeAsync(HttpRequest request, StripDesk desk)
    {
        var form = await request.ReadFormAsync();
        var text = form["document"].ToString();
        if (form.Files["file"] is { Length: > 0 and <= LargestBytes } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = await reader.ReadToEndAsync();
        }

        var visit = Id.Read<Visit>(form["visit"]);
        if (text.Contains(WearDocument.Format, StringComparison.Ordinal))
        {
            var (sheet, faults) = WearDocument.Read(text);
            return sheet is null ? Refused(desk, text, faults, visit) : Results.Redirect(StripAddress.Wear(desk.Wear.Take(text, StripDesk.Of(sheet)), visit));
        }

        var (levels, wrong) = LevelDocument.Read(text);
        return levels is null ? Refused(desk, text, wrong, visit) : Results.Redirect(StripAddress.Level(desk.Levels.Take(text, StripDesk.Of(levels)), visit));
    }

    private static IResult Refused(StripDesk desk, string text, IReadOnlyList<Workshop.Cars.Fault> faults, Id<Visit>? visit) =>
        Pages.Show<StripPage>(new { Desk = desk, Text = text, Faults = faults, Visit = visit }, StatusCodes.Status422UnprocessableEntity);
}
