using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>The journal of a visit, and the way back for what was taken off.</summary>
internal static class JournalEndpoints
{
    private const int PerPage = 100;
    private const int LastPage = 10_000;

    public static void MapJournal(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/visits/{id}/journal", (string id, string? page, VisitDesk desk) => desk.OnVisitAsync(id, record => ShowAsync(record, page, desk)));
        routes.MapPost("/visits/{id}/bring-back", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => BringBackAsync(record, fields, desk))).GuardForm();
    }

    private static async Task<IResult> ShowAsync(VisitRecord record, string? page, VisitDesk desk)
    {
        var number = int.TryParse(page, NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? Math.Clamp(asked, 1, LastPage) : 1;
        var lines = await desk.Record.JournalAsync(record.Visit.Id, int.MaxValue);
        return Pages.Show<JournalPage>(new
        {
            Record = record,
            Lines = lines.Skip((number - 1) * PerPage).Take(PerPage).ToList(),
            TakenOff = JournalWords.TakenOff(lines),
            Page = number,
            More = lines.Count > number * PerPage,
            desk.Today,
        });
    }

    private static Task<IResult> BringBackAsync(VisitRecord record, FormFields fields, VisitDesk desk) => fields.Text("kind") switch
    {
        nameof(Finding) => BringBackAsync<Finding>(record, fields, desk),
        nameof(WorkNote) => BringBackAsync<WorkNote>(record, fields, desk),
        nameof(PartLine) => BringBackAsync<PartLine>(record, fields, desk),
        nameof(TimeLine) => BringBackAsync<TimeLine>(record, fields, desk),
        nameof(Approval) => BringBackAsync<Approval>(record, fields, desk),
        nameof(Photograph) => BringBackAsync<Photograph>(record, fields, desk),
        nameof(Reading) => BringBackAsync<Reading>(record, fields, desk),
        nameof(RoadRun) => BringBackAsync<RoadRun>(record, fields, desk),
        nameof(Component) => BringBackAsync<Component>(record, fields, desk),
        _ => Task.FromResult(desk.Refuse("This is nothing that can be brought back here.", $"{Addresses.Of(record.Visit.Id)}/journal")),
    };

    private static async Task<IResult> BringBackAsync<T>(VisitRecord record, FormFields fields, VisitDesk desk)
        where T : RecordItem<T>
    {
        var back = $"{Addresses.Of(record.Visit.Id)}/journal";
        var known = fields.Named<T>("item") is { } id ? await desk.Record.FindAsync(id) : null;
        return known is null || (known is IOfVisit part && part.Visit != record.Visit.Id) || (known is Component component && component.Car != record.Car.Id)
            ? desk.Refuse("That is not in the record of this visit. Load the page again.", back)
            : await desk.KeepAsync(fields, $"brought back: {JournalWords.Name(known)}", record.Visit.Id, back, known with { Version = fields.Version, Removed = false });
    }
}
