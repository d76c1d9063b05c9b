using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Supply;

/// <summary>Fuel supplies: of a visit by its worksheet, and the samples.</summary>
internal static class SupplyEndpoints
{
    public static void MapSupply(this IEndpointRouteBuilder routes)
    {
        var intake = routes.MapIntake(routes.ServiceProvider.GetRequiredService<SuppliesInHand>().Intake);
        routes.MapGet("/supply/{id}", (string id, string? @case, string? part, SuppliesInHand supplies) =>
            supplies.Lines.Find(id) is { } line ? Show(line, $"/supply/{id}", null, @case, part) : intake.Missing(null));
        routes.MapGet("/visits/{id}/supply/line", (string id, string? @case, string? part, VisitDesk desk, SuppliesInHand supplies) =>
            desk.OnVisitAsync(id, record => OfVisit(record, supplies, @case, part)));
    }

    /// <summary>Address of the line of a visit.</summary>
    public static string Of(Id<Visit> visit) => $"/visits/{visit}/supply/line";

    private static IResult OfVisit(VisitRecord record, SuppliesInHand supplies, string? moment, string? part)
    {
        if (record.SheetOf(SupplyDocument.Format) is not { } sheet)
        {
            return Results.Redirect(WorksheetAddress.New(record.Visit.Id, WorksheetForms.Supply));
        }

        var taken = supplies.Lines.Take(sheet.Document);
        return taken.Said is { } line
            ? Show(line, Of(record.Visit.Id), record.Visit.Id, moment, part)
            : Pages.Error(StatusCodes.Status422UnprocessableEntity, "The document kept cannot be read by this version.", [.. taken.Faults.Select(WorksheetForms.Words)], "/supply", supplies.Intake.Title);
    }

    private static IResult Show(SupplyAnalysis line, string here, Id<Visit>? visit, string? moment, string? part)
    {
        var known = SupplyPlace.Cases.Where(one => string.Equals(one.Word, moment ?? "full", StringComparison.Ordinal)).ToList();
        if (known.Count == 0 || (part is not null && !line.Supply.Line.Parts.Any(one => one.Name.Equals(part, StringComparison.Ordinal))))
        {
            return Pages.Error(StatusCodes.Status400BadRequest, "That cannot be looked up.", ["case: idle, full or hot. part: a part of this line by its name."], here, "Supply");
        }

        return Pages.Show<SupplyPage>(new { Place = new SupplyPlace(line, here, known[0].Kind, part, visit) });
    }
}
