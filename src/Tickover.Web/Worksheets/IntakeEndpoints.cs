using Tickover.Web.Frame;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>Takes documents into the hand.</summary>
internal static class IntakeEndpoints
{
    private static readonly string[] NotKept = ["Documents are in hand while the server runs; nothing of them is kept here. Drop the file again, or open it from the visit it was kept on."];

    /// <summary>Maps the page of an intake and its form.</summary>
    /// <param name="routes">The routes.</param>
    /// <param name="intake">The intake.</param>
    /// <returns>The intake.</returns>
    public static Intake MapIntake(this IEndpointRouteBuilder routes, Intake intake)
    {
        routes.MapGet(intake.Address, (string? visit) => Show(intake, Id.Read<Visit>(visit), "", []));
        routes.MapPost(intake.Address, (HttpRequest request) => TakeAsync(request, intake)).GuardForm();
        return intake;
    }

    /// <summary>What is said where a document is no longer in hand.</summary>
    /// <param name="intake">Where it could be taken in again.</param>
    /// <param name="visit">The visit of the address.</param>
    /// <returns>The page.</returns>
    public static IResult Missing(this Intake intake, string? visit) =>
        Pages.Error(StatusCodes.Status404NotFound, "That document is not in hand.", NotKept, intake.List(Id.Read<Visit>(visit)), intake.Title);

    private static IResult Show(Intake intake, Id<Visit>? visit, string text, IReadOnlyList<Fault> faults) => Pages.Show<IntakePage>(
        new { Intake = intake, Visit = intake.Stage is null ? null : visit, Text = text, Faults = faults },
        faults.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);

    private static async Task<IResult> TakeAsync(HttpRequest request, Intake intake)
    {
        var form = await request.ReadFormAsync();
        var visit = Id.Read<Visit>(form["visit"]);
        var (_, text, faults) = await DroppedDocument.ReadAsync(form);
        if (faults.Count > 0)
        {
            return Show(intake, visit, text, faults);
        }

        var kind = intake.Kinds.LastOrDefault(known => text.Contains(known.Format, StringComparison.Ordinal)) ?? intake.Kinds[0];
        var (page, wrong) = kind.Take(text, visit);
        return page is null ? Show(intake, visit, text, wrong) : Results.Redirect(page);
    }
}
