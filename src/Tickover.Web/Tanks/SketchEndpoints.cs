using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Tanks.Sketching;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Tanks;

/// <summary>Tanks sketched with a tape and a finger: on a visit, and without one to try.</summary>
internal static class SketchEndpoints
{
    private const string FragmentHeader = "X-Tickover-Fragment";

    /// <summary>Without a visit.</summary>
    public const string Alone = "/tanks/outline";

    public static void MapSketches(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Alone, (HttpContext context) => Show(context, new OutlineSketch(), q => new SketchPlace
        {
            Query = q,
            Answer = SketchAnalyst.Of(q.Sketch),
            Page = Alone,
            Back = ("/tanks", "Tanks"),
        }));
        routes.MapGet("/visits/{id}/storage/outline", (string id, HttpContext context, VisitDesk desk) => desk.OnVisitAsync(id, record => OfVisit(record, context)));
    }

    /// <summary>Address of the sketch of a visit.</summary>
    public static string Of(Id<Visit> visit) => $"/visits/{visit}/storage/outline";

    /// <summary>Address of the sketch of a tank that is kept on a visit.</summary>
    public static string Of(Id<Visit> visit, string tank) => $"{Of(visit)}?tank={Uri.EscapeDataString(tank)}";

    private static IResult OfVisit(VisitRecord record, HttpContext context)
    {
        var sheet = record.SheetOf(WorksheetForms.Tank.Format);
        var tank = context.Request.Query["tank"].ToString();
        var start = sheet is not null && tank.Length > 0 ? SketchDocument.From(sheet.Document, tank) : null;
        return tank.Length > 0 && start is null
            ? Pages.NotFound("That tank is not drawn by an outline on this visit.", "Open the tanks of the visit and choose one of those, or sketch a new one.")
            : Show(context, start ?? new OutlineSketch(), q => new SketchPlace
            {
                Query = q,
                Answer = SketchAnalyst.Of(q.Sketch),
                Page = Of(record.Visit.Id),
                Back = (Addresses.Of(record.Visit.Id, Stage.Storage), Stage.Storage.Words()),
                Car = record.Car.Name,
                KeepAt = WorksheetAddress.New(record.Visit.Id, WorksheetForms.Tank),
                Kept = sheet?.Document,
                KeptName = sheet?.Name ?? "",
            });
    }

    // What a form sent and could be read has an address that says the outcome, for reload, Back and bookmark.
    private static IResult Show(HttpContext context, OutlineSketch start, Func<SketchQuery, SketchPlace> place)
    {
        var query = SketchQuery.Read(context.Request.Query, start);
        var at = place(query);
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.Vary = FragmentHeader;
        var isRight = query.Problems.Count == 0;
        if (query.IsForm && isRight)
        {
            return Results.Redirect(query.Address(at.Page));
        }

        var status = isRight ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity;
        return context.Request.Headers.ContainsKey(FragmentHeader)
            ? Pages.Show<SketchWork>(new { Place = at }, status)
            : Pages.Show<SketchPage>(new { Place = at }, status);
    }
}
