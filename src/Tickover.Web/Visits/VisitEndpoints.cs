using Tickover.Web.Balance;
using Tickover.Web.FaultFinding;
using Tickover.Web.Frame;
using Tickover.Web.RoadLogs;
using Tickover.Web.StripDown;
using Tickover.Web.Supply;
using Tickover.Web.Tanks;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Cautions;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Visits;

/// <summary>The pages and forms of a visit.</summary>
internal static class VisitEndpoints
{
    public static void MapVisits(this IEndpointRouteBuilder routes)
    {
        var visit = routes.MapGroup("/visits/{id}");
        visit.MapGet("", (string id, VisitDesk desk, IMixtureAdvice mixture) => desk.OnVisitAsync(id, record => Pages.Show<VisitPage>(
            new { Record = record, Advice = NextSteps.Of(new AdviceContext(record, desk.Now, mixture)), desk.Today })));
        visit.MapPost("/undo", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
            desk.StepAsync(fields, record.Visit.Id, Pages.Back(fields.Text("back"), Addresses.Of(record.Visit.Id)), desk.Record.UndoAsync))).GuardForm();
        visit.MapPost("/redo", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
            desk.StepAsync(fields, record.Visit.Id, Pages.Back(fields.Text("back"), Addresses.Of(record.Visit.Id)), desk.Record.RedoAsync))).GuardForm();
        visit.MapStages();
        visit.MapCards();
        visit.MapFindings();
        visit.MapGates();
        visit.MapCautions();
        visit.MapAccount();
        routes.MapPictures();
        routes.MapRoadLogs();
        routes.MapBalance();
        routes.MapWorksheets();
        routes.MapSupply();
        routes.MapTanks();
        routes.MapSketches();
        routes.MapFaults();
    }

    private static void MapGates(this IEndpointRouteBuilder visit)
    {
        visit.MapGet("/gates/{gate}", (string id, string gate, string? check, VisitDesk desk) => desk.OnVisitAsync(id, record =>
        {
            if (Addresses.ReadGate(gate) is not { } known)
            {
                return Pages.NotFound("No such tap on the route.", "Choose one on the page of the visit.");
            }

            var status = GateStatus.Of(record, known, desk.Today);
            var chosen = status.Wanting.FirstOrDefault(c => string.Equals(c.Check.Key, check, StringComparison.Ordinal)) ?? status.Wanting.FirstOrDefault();
            return Pages.Show<GatePage>(new { Record = record, Status = status, chosen?.Check, desk.Person });
        }));
        visit.MapPost("/gates/{gate}/sign", (string id, string gate, VisitDesk desk, IPins pins) =>
            desk.OnFormAsync(id, (record, fields) => SignAsync(record, gate, fields, desk, pins, Signing.Sign, "seen"))).GuardForm();
        visit.MapPost("/gates/{gate}/override", (string id, string gate, VisitDesk desk, IPins pins) =>
            desk.OnFormAsync(id, (record, fields) => SignAsync(record, gate, fields, desk, pins, Signing.Override, "reason"))).GuardForm();
    }

    private static async Task<IResult> SignAsync(
        VisitRecord record, string gate, FormFields fields, VisitDesk desk, IPins pins, Func<VisitRecord, SignWish, SigningAnswer> sign, string words)
    {
        if (Addresses.ReadGate(gate) is not { } known || fields.Named<Person>("person") is not { } person)
        {
            return desk.Refuse("Choose who signs.", Addresses.Of(record.Visit.Id));
        }

        var back = Addresses.Of(record.Visit.Id, known);
        var answer = sign(record, new SignWish
        {
            Key = fields.Key,
            Gate = known,
            Person = person,
            On = desk.Today,
            Check = fields.Text("check"),
            Words = fields.Text(words),
            Device = desk.Device,
        });
        if (answer.Act is not { } act)
        {
            return desk.Refuse(string.Join(" ", answer.Refusals), back);
        }

        // The PIN last: a wrong word costs nobody one of their tries.
        return await pins.TryAsync(person, fields.Text("pin")) is { } wrong ? desk.Refuse(wrong, back) : await desk.KeepAsync(act, back);
    }

    private static void MapCautions(this IEndpointRouteBuilder visit)
    {
        visit.MapGet("/cautions/{caution}", (string id, string caution, VisitDesk desk) => desk.OnVisitAsync(id, record =>
            CautionCatalogue.Find(caution) is { } known
                ? Pages.Show<CautionPage>(new { Record = record, Caution = known, Authorities = CautionCatalogue.DeferTo(known, record.Workshop.House), desk.Today })
                : Pages.NotFound("No such caution.", "Choose one on the page of a stage.")));
        visit.MapPost("/cautions/{caution}", (string id, string caution, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
            CautionCatalogue.Find(caution) is { } known
                ? desk.KeepAsync(
                    fields,
                    $"caution read: {known.Step}",
                    record.Visit.Id,
                    Pages.Back(fields.Text("back"), Addresses.Of(record.Visit.Id, known.Stage)),
                    new CautionSeen { Id = fields.NewId<CautionSeen>(), Visit = record.Visit.Id, Caution = known.Key, Person = desk.Person })
                : Task.FromResult(desk.Refuse("No such caution.", Addresses.Of(record.Visit.Id))))).GuardForm();
    }
}
