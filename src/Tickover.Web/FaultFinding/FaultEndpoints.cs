using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Cars;
using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.FaultFinding.Recorded;
using Tickover.Workshop.Visits;

namespace Tickover.Web.FaultFinding;

/// <summary>The fault finder: on its own, and on a visit.</summary>
internal static class FaultEndpoints
{
    private const int MostFields = 120;
    private const string Name = "What is wrong";

    // The record keeps no empty document: a case without symptoms is one that was put away.
    private static readonly string PutAway = FaultCaseDocument.Write(new FaultCase());

    public static void MapFaults(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/faults", (string? choose, string? find, HttpRequest request, FaultTables tables) =>
        {
            var (table, faults) = tables.Current();
            if (request.Query.Sum(q => q.Value.Count) > MostFields)
            {
                return Pages.Error(StatusCodes.Status400BadRequest, "That is too much for one case.", ["Begin anew with the symptoms."], "/faults", "Fault finder");
            }

            var (given, unknown) = FaultAddress.Read(table, request.Query);
            return unknown.Count > 0
                ? Pages.Error(StatusCodes.Status400BadRequest, "That cannot be looked up.", unknown, "/faults", "Fault finder")
                : Show(new FaultBench(given, null, table), choose, find, faults, []);
        });
        routes.MapGet("/visits/{id}/faults", (string id, string? choose, string? find, VisitDesk desk, FaultTables tables) => desk.OnVisitAsync(id, record =>
        {
            var (table, faults) = tables.Current();
            var (given, unread) = Of(record, table);
            return Show(new FaultBench(given, record, table), choose, find, faults, unread);
        }));
        routes.MapPost("/visits/{id}/faults", (string id, VisitDesk desk, FaultTables tables) => desk.OnFormAsync(id, (record, fields) => DoAsync(record, fields, desk, tables.Current().Table))).GuardForm();
    }

    // The record speaks anew each time: what is measured meanwhile counts. A case of an earlier visit stays with that visit.
    private static (FaultCase Case, IReadOnlyList<Fault> Unread) Of(VisitRecord record, FaultKnowledge table)
    {
        var sheet = record.Worksheets.LastOrDefault(s => s.Visit == record.Visit.Id && string.Equals(s.Form, FaultCaseDocument.Format, StringComparison.Ordinal));
        var reading = sheet is null || string.Equals(sheet.Document, PutAway, StringComparison.Ordinal) ? null : FaultCaseDocument.Read(sheet.Document, table);
        return ((reading?.Case ?? new FaultCase()) with { Record = VisitEvidence.Of(record) }, reading?.Faults ?? []);
    }

    private static IResult Show(FaultBench bench, string? choose, string? find, IReadOnlyList<Fault> table, IReadOnlyList<Fault> unread) => choose is not null || bench.Outlook is null || table.Count > 0
        ? Pages.Show<SymptomsPage>(new
        {
            Bench = bench,
            Find = find ?? "",
            Faults = table.Count > 0 ? table : unread,
            Aside = table.Count > 0
                ? $"The workshop's own table, {FaultTables.FileName} in the data folder, is left aside until it is mended; the table of the trade is used."
                : "The case kept on this visit cannot be read with the table at hand. It stays in the record; a new one is begun here.",
        })
        : Pages.Show<FaultPage>(new { Bench = bench });

    private static async Task<IResult> DoAsync(VisitRecord record, FormFields fields, VisitDesk desk, FaultKnowledge table)
    {
        var here = FaultAddress.Of(record.Visit.Id);
        var act = fields.Choice("act", FaultAct.Undo);
        var value = fields.Text("value");
        if (FaultActs.Do(table, Of(record, table).Case, act, value) is not { } after)
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
        return await desk.KeepAsync(fields, FaultActs.Words(table, act, value), record.Visit.Id, here, sheet);
    }
}
