using Tickover.Instruments.Logs;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>Road logs of a visit, what they say, and the jets they ask for.</summary>
internal static class RoadLogEndpoints
{
    private const long LargestLog = 120L * 1024 * 1024;

    public static void AddRoadLogs(this IServiceCollection services)
    {
        services.AddSingleton<ILogBook, LogBook>();
        services.AddSingleton<JetDesk>();
        services.AddSingleton<LogsInHand>();
        services.AddSingleton<LogIntake>();
    }

    public static void MapRoadLogs(this IEndpointRouteBuilder routes)
    {
        routes.MapShelf();
        var visit = routes.MapGroup("/visits/{id}/road-logs");
        visit.MapGet("", (string id, VisitDesk desk, JetDesk jets) => desk.OnVisitAsync(id, async record =>
        {
            var stock = await desk.Record.AllAsync<StockJet>();
            return Pages.Show<RoadLogsPage>(new { Record = record, Work = jets.Find(record, stock), HasShelf = stock.Any(s => !s.Removed && s.Count > 0), desk.Today, desk.Now });
        }));
        visit.MapPost("", (string id, VisitDesk desk, LogIntake intake) => desk.OnFormAsync(id, (record, fields) => intake.KeepAsync(record, fields, desk))).GuardForm(LargestLog);
        visit.MapGet("/{run:guid}", (string id, string run, VisitDesk desk, LogIntake intake) => desk.OnVisitAsync(id, record => intake.Show(record, run)));
        visit.MapPost("/{run:guid}", (string id, string run, VisitDesk desk, LogIntake intake) => desk.OnFormAsync(id, (record, fields) => intake.CorrectAsync(record, run, fields, desk))).GuardForm();
        visit.MapPost("/choose", (string id, VisitDesk desk, JetDesk jets) => desk.OnFormAsync(id, async (record, _) =>
        {
            jets.Begin(record, await desk.Record.AllAsync<StockJet>());
            return Results.Redirect(Of(record));
        })).GuardForm();
        visit.MapFitting();
        visit.MapPost("/stop", (string id, VisitDesk desk, JetDesk jets) => desk.OnFormAsync(id, async (record, _) =>
        {
            jets.Stop(record, await desk.Record.AllAsync<StockJet>());
            return Results.Redirect(Of(record));
        })).GuardForm();
        visit.MapGet("/trial-card", (string id, VisitDesk desk, JetDesk jets) => desk.OnVisitAsync(id, async record =>
            jets.Find(record, await desk.Record.AllAsync<StockJet>())?.Outcome is { Advice: not null } outcome
                ? Pages.Show<TrialCardPage>(new { Record = record, Outcome = outcome, desk.Today })
                : Pages.NotFound("No jets are chosen yet.", "Choose them on the page of the road logs; the card follows from that.")));
        visit.MapPost("/{run:guid}/leave-out", (string id, string run, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => ChangeAsync(
            record, run, fields, desk, "road log left out", r => r with { LeftOut = !r.LeftOut }))).GuardForm();
        visit.MapPost("/{run:guid}/remove", (string id, string run, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => ChangeAsync(
            record, run, fields, desk, "road log taken off", r => r with { Removed = true }))).GuardForm();
    }

    /// <summary>Address of the road logs of a visit.</summary>
    public static string Of(VisitRecord record) => $"{Addresses.Of(record.Visit.Id)}/road-logs";

    /// <summary>Address of one road log.</summary>
    public static string Of(VisitRecord record, Id<RoadRun> run) => $"{Of(record)}/{run}";

    private static Task<IResult> ChangeAsync(VisitRecord record, string run, FormFields fields, VisitDesk desk, string words, Func<RoadRun, RoadRun> change) =>
        record.Runs.FirstOrDefault(r => r.Id == Id.Read<RoadRun>(run)) is { } known
            ? desk.KeepAsync(fields, $"{words}: {known.Name}", record.Visit.Id, Of(record), change(known with { Version = fields.Version }))
            : Task.FromResult(desk.Refuse("That road log is not in the record.", Of(record)));
}
