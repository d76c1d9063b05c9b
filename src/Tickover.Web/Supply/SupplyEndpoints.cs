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
        routes.MapGet("/supply", (WorksheetSamples samples) => Pages.Show<SuppliesPage>(new { Samples = samples.Of(WorksheetForms.Supply) }));
        routes.MapGet("/supply/{name}", (string name, string? @case, string? part, WorksheetSamples samples) =>
            samples.Of(WorksheetForms.Supply).FirstOrDefault(s => string.Equals(s.File, name + WorksheetForms.Supply.SampleEnding, StringComparison.Ordinal)) is { Text: not null } sample
                ? Show(sample.Text, $"/supply/{name}", null, @case, part)
                : Pages.Error(StatusCodes.Status404NotFound, "No such sample.", ["Choose one of those at hand."], "/supply", "Supplies"));
        routes.MapGet("/visits/{id}/supply/line", (string id, string? @case, string? part, VisitDesk desk) => desk.OnVisitAsync(id, record =>
            record.SheetOf(SupplyDocument.Format) is { } sheet
                ? Show(sheet.Document, Of(record.Visit.Id), record.Visit.Id, @case, part)
                : Results.Redirect(WorksheetAddress.New(record.Visit.Id, WorksheetForms.Supply))));
    }

    /// <summary>Address of the line of a visit.</summary>
    public static string Of(Id<Visit> visit) => $"/visits/{visit}/supply/line";

    private static IResult Show(string document, string here, Id<Visit>? visit, string? moment, string? part)
    {
        var read = SupplyDocument.Read(document);
        if (read.Supply is not { } supply)
        {
            return Pages.Error(StatusCodes.Status422UnprocessableEntity, "The document kept cannot be read by this version.", [.. read.Faults.Select(WorksheetForms.Words)], "/supply", "Supplies");
        }

        var known = SupplyPlace.Cases.Where(one => string.Equals(one.Word, moment ?? "full", StringComparison.Ordinal)).ToList();
        if (known.Count == 0 || (part is not null && !supply.Line.Parts.Any(one => one.Name.Equals(part, StringComparison.Ordinal))))
        {
            return Pages.Error(StatusCodes.Status400BadRequest, "That cannot be looked up.", ["case: idle, full or hot. part: a part of this line by its name."], here, "Supply");
        }

        return Pages.Show<SupplyPage>(new { Place = new SupplyPlace(SupplyAnalyst.Of(supply), here, known[0].Kind, part, visit) });
    }
}
