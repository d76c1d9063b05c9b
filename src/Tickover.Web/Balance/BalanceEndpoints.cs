using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Balance;

/// <summary>The rounds of balancing on a visit: read, turn, prove.</summary>
internal static class BalanceEndpoints
{
    public static void MapBalance(this IEndpointRouteBuilder routes)
    {
        var visit = routes.MapGroup("/visits/{id}/balance/rounds");
        visit.MapGet("", (string id, string? read, VisitDesk desk) => desk.OnVisitAsync(id, record => Show(record, read, null, desk)));
        visit.MapPost("", (string id, VisitDesk desk) => desk.OnNewEntryAsync(id, (record, fields) => ReadAsync(record, fields, desk))).GuardForm();
        visit.MapPost("/acts", (string id, VisitDesk desk) => desk.OnNewEntryAsync(id, (record, fields) => ActAsync(record, fields, desk))).GuardForm();
        routes.MapPractice();
    }

    /// <summary>Address of the rounds of a visit.</summary>
    public static string Of(Id<Visit> visit) => $"/visits/{visit}/balance/rounds";

    private static IResult Show(VisitRecord record, string? read, string? ask, VisitDesk desk)
    {
        if (BalanceOfVisit.Of(record) is not { } balance)
        {
            return Results.Redirect(WorksheetAddress.New(record.Visit.Id, WorksheetForms.Plan));
        }

        var book = new BalanceBook
        {
            Plan = balance.Plan,
            Steps = balance.Steps,
            Meter = new MeterSettings { Available = balance.Available },
        };
        var chosen = RoundMeasure.Find(read);

        // While nothing may be read, the last round is of more use than the empty rings of the next.
        var last = chosen is null && BalancePage.ShutOn(record, desk.Today).Count > 0 ? book.Steps.OfType<RoundRead>().LastOrDefault()?.Round : null;
        var bench = BalanceBench.Of(book, last is null ? (chosen?.HeldRpm, chosen is not null) : (last.HeldRpm, true), $"{Of(record.Visit.Id)}/acts");
        bench = bench with { Reading = ReadPlan.Of(balance, bench.Next, chosen) };
        return Pages.Show<BalancePage>(new { Record = record, Bench = bench, IsChosen = chosen is not null, desk.Person, desk.Today, Ask = ask });
    }

    private static Task<IResult> ReadAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var entry = RoundEntry.Of(record, fields, desk.Now);
        var back = $"{Of(record.Visit.Id)}{(fields.Text("chosen") is { Length: > 0 } chosen ? $"?read={Uri.EscapeDataString(chosen)}" : "")}";
        if (entry.Question.Length > 0 && fields.Problems.Count == 0)
        {
            return Task.FromResult(desk.Refuse($"{entry.Question} If it is right as typed, tick \"An unusual figure is right as typed\" and keep it again.", back));
        }

        return entry.Reading is { } reading && fields.Problems.Count == 0
            ? desk.KeepAsync(fields, entry.Words, record.Visit.Id, back, reading)
            : Task.FromResult(desk.Refuse(string.Join(" ", fields.Problems), back));
    }

    private static Task<IResult> ActAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var back = Of(record.Visit.Id);
        if (PlanOfVisit.Of(record) is not { } plan)
        {
            return Task.FromResult(desk.Refuse("Nobody has said yet what stands on this engine.", back));
        }

        return ActEntry.Of(fields, plan) is { } act && fields.Problems.Count == 0
            ? desk.KeepAsync(fields, act.Words, record.Visit.Id, back, act.ToRecord(record, fields, desk.Now))
            : Task.FromResult(desk.Refuse(string.Join(" ", fields.Problems), back));
    }
}
