using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.FaultFinding.Recorded;
using Tickover.Workshop.Visits;

namespace Tickover.Web.FaultFinding;

/// <summary>The fault finder: on its own, and on a visit.</summary>
internal static class FaultEndpoints
{
    private const int MostFields = 120;
    private const string Name = "What is wrong";

    public static void MapFaults(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/faults", (string? choose, string? find, HttpRequest request) =>
        {
            if (request.Query.Sum(q => q.Value.Count) > MostFields)
            {
                return Pages.Error(StatusCodes.Status400BadRequest, "That is too much for one case.", ["Begin anew with the symptoms."], "/faults", "Fault finder");
            }

            var (given, unknown) = FaultAddress.Read(request.Query);
            return unknown.Count > 0
                ? Pages.Error(StatusCodes.Status400BadRequest, "That cannot be looked up.", unknown, "/faults", "Fault finder")
                : Show(new FaultBench(given, null), choose, find);
        });
        routes.MapGet("/visits/{id}/faults", (string id, string? choose, string? find, VisitDesk desk) => desk.OnVisitAsync(id, record => Show(new FaultBench(Of(record), record), choose, find)));
        routes.MapPost("/visits/{id}/faults", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => DoAsync(record, fields, desk))).GuardForm();
    }

    // The record speaks anew each time: what is measured meanwhile counts.
    private static FaultCase Of(VisitRecord record)
    {
        var kept = record.SheetOf(FaultCaseDocument.Format) is { } sheet ? FaultCaseDocument.Read(sheet.Document, FaultBench.Knowledge).Case : null;
        return (kept ?? new FaultCase()) with { Record = VisitEvidence.Of(record) };
    }

    private static IResult Show(FaultBench bench, string? choose, string? find) => choose is not null || bench.Outlook is null
        ? Pages.Show<SymptomsPage>(new { Bench = bench, Find = find ?? "" })
        : Pages.Show<FaultPage>(new { Bench = bench });

    private static async Task<IResult> DoAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var here = FaultAddress.Of(record.Visit.Id);
        var act = fields.Choice("act", FaultAct.Undo);
        var value = fields.Text("value");
        if (FaultActs.Do(Of(record), act, value) is not { } after)
        {
            return desk.Refuse("The table of causes and tests does not know that.", here);
        }

        var sheet = new Worksheet
        {
            Id = fields.NewId<Worksheet>(),
            Visit = record.Visit.Id,
            Stage = Stage.Road,
            Form = FaultCaseDocument.Format,
            Name = Name,
            Document = FaultCaseDocument.Write(after),
            On = desk.Today,
        };
        return await desk.KeepAsync(fields, FaultActs.Words(act, value), record.Visit.Id, here, sheet);
    }
}
