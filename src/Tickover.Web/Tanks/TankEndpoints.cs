using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Tanks;

/// <summary>Tanks: samples without a visit, and the document kept on a visit.</summary>
internal static class TankEndpoints
{
    private const string FragmentHeader = "X-Tickover-Fragment";
    private const double MostTilt = 30;

    public static void MapTanks(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<TanksInHand>().Intake);
        routes.MapGet("/tanks/{id}", (string id, HttpContext context, TanksInHand tanks) => tanks.Tanks.Find(id) is { } analysis
            ? Show(new TankPlace { Analysis = analysis, Address = $"/tanks/{id}", Back = (intake.Address, intake.Title) }, context)
            : intake.Missing(null));
        routes.MapGet("/visits/{id}/storage/tanks", (string id, HttpContext context, VisitDesk desk, TanksInHand tanks) => desk.OnVisitAsync(id, record => OfVisit(record, context, tanks)));
    }

    /// <summary>Address of the tanks of a visit.</summary>
    public static string Of(Id<Visit> visit) => $"/visits/{visit}/storage/tanks";

    private static IResult OfVisit(VisitRecord record, HttpContext context, TanksInHand tanks)
    {
        var replace = WorksheetAddress.New(record.Visit.Id, WorksheetForms.Tank);
        return record.SheetOf(WorksheetForms.Tank.Format) is { } sheet && tanks.Tanks.Take(sheet.Document).Said is { } analysis
            ? Show(new TankPlace { Analysis = analysis, Address = Of(record.Visit.Id), Back = (Addresses.Of(record.Visit.Id, Stage.Storage), Stage.Storage.Words()), Replace = replace, Sketch = SketchEndpoints.Of(record.Visit.Id) }, context)
            : Results.Redirect(replace);
    }

    private static IResult Show(TankPlace place, HttpContext context)
    {
        var query = context.Request.Query;
        if (Read(query["litres"], 0, place.FullLitres, Math.Round(place.FullLitres / 2)) is not { } litres
            || Read(query["nose"], -MostTilt, MostTilt, 0) is not { } nose
            || Read(query["left"], -MostTilt, MostTilt, 0) is not { } left)
        {
            return Pages.Error(StatusCodes.Status400BadRequest, "That place cannot be looked up.", [string.Create(CultureInfo.InvariantCulture, $"litres: 0 to {place.FullLitres:0.#}. nose and left: −{MostTilt:0} to {MostTilt:0} per cent.")], place.Address, "Tanks");
        }

        var at = place with { Litres = litres, NoseUp = nose, LeftUp = left };
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.Vary = FragmentHeader;
        return context.Request.Headers.ContainsKey(FragmentHeader)
            ? Pages.Show<TankDrawing>(new { Place = at })
            : Pages.Show<TankPage>(new { Place = at });
    }

    private static double? Read(string? text, double least, double most, double usual) =>
        text is null ? usual
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most ? number
        : null;
}
