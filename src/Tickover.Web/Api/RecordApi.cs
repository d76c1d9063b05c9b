using System.Text.Json;
using Tickover.Web.Lan;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Api;

/// <summary>The workshop's record for programs: what the pages show and keep.</summary>
internal static class RecordApi
{
    private const string Record = "Record";
    private const int MostItems = 500;

    // What is signed with a PIN is signed on the page, where the PIN is asked for.
    private static readonly Type[] Signed = [typeof(SignOff), typeof(Signature)];

    public static void MapRecordApi(this RouteGroupBuilder api)
    {
        api.MapGet("/record", async (IRecord record, CancellationToken cancellation) => Results.Json(await record.SizeAsync(cancellation), RecordKinds.Json))
            .Describe<RecordSize>("readRecord", Record, "Says which record is open and how much is in it.");
        api.MapGet("/measures", () => Results.Json(MeasureCatalogue.All.Select(MeasureAnswer.Of), RecordKinds.Json))
            .Describe<IEnumerable<MeasureAnswer>>("listMeasures", Record, "Lists what can be measured on a visit.");
        api.MapGet("/visits", async (VisitDesk desk, CancellationToken cancellation) =>
            Results.Json((await desk.Record.OpenVisitsAsync(cancellation)).Select(v => VisitRow.Of(v, desk.Now)), RecordKinds.Json))
            .Describe<IEnumerable<VisitRow>>("listVisits", Record, "Lists the cars in the shop.");
        api.MapGet("/visits/{id}", (string id, IRecord record, CancellationToken cancellation) => OnVisitAsync(id, record, visit => visit, cancellation))
            .Describe<VisitRecord>("readVisit", Record, "Tells everything that was kept of one visit.", StatusCodes.Status404NotFound);
        api.MapGet("/visits/{id}/next", (string id, VisitDesk desk, IMixtureAdvice mixture, CancellationToken cancellation) =>
            OnVisitAsync(id, desk.Record, visit => NextSteps.All(new AdviceContext(visit, desk.Now, mixture)), cancellation))
            .Describe<IEnumerable<Advice>>("readNext", Record, "Says what is to be done next on a visit, and why, the most useful first.", StatusCodes.Status404NotFound);
        api.MapGet("/find", async (string? q, IRecord record, CancellationToken cancellation) => Results.Json(await record.SearchAsync(q ?? "", cancellation), RecordKinds.Json))
            .Describe<IEnumerable<FoundItem>>("find", Record, "Finds words in everything that was kept.")
            .WithQuery(("q", "Words; each of them has to be found."));
        api.MapPost("/acts", KeepAsync)
            .Describe<KeptAnswer>(
                "keepAct", Record, "Keeps an act whole or not at all; the same key is kept once.",
                StatusCodes.Status409Conflict, StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType, StatusCodes.Status422UnprocessableEntity);
        api.MapPost("/undo", (StepQuestion question, IRecord record, IDeviceContext device, CancellationToken cancellation) =>
            StepAsync(question, device, record.UndoAsync, cancellation))
            .Describe<KeptAnswer>("undo", Record, "Takes back the last act of this device.", StatusCodes.Status409Conflict, StatusCodes.Status422UnprocessableEntity);
        api.MapPost("/redo", (StepQuestion question, IRecord record, IDeviceContext device, CancellationToken cancellation) =>
            StepAsync(question, device, record.RedoAsync, cancellation))
            .Describe<KeptAnswer>("redo", Record, "Does again what was last taken back.", StatusCodes.Status409Conflict, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> OnVisitAsync<T>(string id, IRecord record, Func<VisitRecord, T> answer, CancellationToken cancellation) =>
        Id.Read<Visit>(id) is { } known && await record.VisitAsync(known, cancellation) is { } visit
            ? Results.Json(answer(visit), RecordKinds.Json)
            : Results.Problem(title: "No such visit here.", detail: "GET /api/visits lists those that are open.", statusCode: StatusCodes.Status404NotFound);

    private static async Task<IResult> KeepAsync(ActQuestion question, IRecord record, IDeviceContext device, CancellationToken cancellation)
    {
        if (question.Items.Count is 0 or > MostItems)
        {
            return Refuse($"An act holds 1 to {MostItems} items.");
        }

        var items = new List<RecordItem>();
        foreach (var asked in question.Items)
        {
            if (RecordKinds.Find(asked.Kind) is not { } kind || Signed.Contains(kind))
            {
                return Refuse(RecordKinds.Find(asked.Kind) is null ? $"\"{asked.Kind}\" is no kind of item." : "What is signed with a PIN is signed on the page of the visit.");
            }

            try
            {
                items.Add(RecordKinds.Read(asked.Kind, asked.Item.GetRawText()));
            }
            catch (JsonException fault)
            {
                return Refuse($"{asked.Kind}: {fault.Message}");
            }
        }

        var act = new Act { Key = question.Key, Items = items, Words = question.Words, Visit = Id.Read<Visit>(question.Visit), Person = Id.Read<Person>(question.Person), Device = device.Device.Name };
        return Answer(await record.KeepAsync(act, cancellation));
    }

    private static async Task<IResult> StepAsync(StepQuestion question, IDeviceContext device, Func<StepBack, CancellationToken, Task<ActOutcome>> step, CancellationToken cancellation) =>
        Answer(await step(new StepBack { Key = question.Key, Visit = Id.Read<Visit>(question.Visit), Device = device.Device.Name }, cancellation));

    private static IResult Refuse(string words) => Results.Problem(title: "This was not kept.", detail: words, statusCode: StatusCodes.Status422UnprocessableEntity);

    private static IResult Answer(ActOutcome outcome) => outcome.Ending switch
    {
        ActEnding.Clashed => Results.Problem(
            title: "Two people changed one thing.", detail: outcome.Words, statusCode: StatusCodes.Status409Conflict,
            extensions: new Dictionary<string, object?>(StringComparer.Ordinal) { ["clashes"] = outcome.Clashes }),
        ActEnding.Refused => Refuse(outcome.Words),
        _ => Results.Json(KeptAnswer.Of(outcome, "")),
    };
}
