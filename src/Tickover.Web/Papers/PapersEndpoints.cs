using Tickover.Web.Frame;
using Tickover.Web.Visits;

namespace Tickover.Web.Papers;

/// <summary>The pages beside the visit itself: first run, taking in, brief, papers, journal, history, search, the workshop.</summary>
internal static class PapersEndpoints
{
    public static void MapPapers(this IEndpointRouteBuilder routes)
    {
        routes.MapBegin();
        routes.MapNewVisit();
        routes.MapBrief();
        routes.MapPaper();
        routes.MapJournal();
        routes.MapHistory();
        routes.MapFind();
        routes.MapWorkshop();

        // Steps back among what belongs to no visit: the workshop's own things.
        routes.MapPost("/undo", (VisitDesk desk) => desk.OnFormAsync(fields => desk.StepAsync(fields, null, Pages.Back(fields.Text("back")), desk.Record.UndoAsync))).GuardForm();
        routes.MapPost("/redo", (VisitDesk desk) => desk.OnFormAsync(fields => desk.StepAsync(fields, null, Pages.Back(fields.Text("back")), desk.Record.RedoAsync))).GuardForm();
    }
}
