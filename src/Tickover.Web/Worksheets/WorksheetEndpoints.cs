using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>What was measured for a computation is taken in and kept on the visit.</summary>
internal static class WorksheetEndpoints
{
    public static void AddWorksheets(this IServiceCollection services) => services.AddSingleton<WorksheetSamples>().AddSingleton<DrawnSheets>();

    public static void MapWorksheets(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/bench", () => Pages.Show<BenchPage>(new { }));
        var sheet = routes.MapGroup("/visits/{id}/worksheets/{key}");
        sheet.MapGet("", (string id, string key, VisitDesk desk, WorksheetSamples samples) => desk.OnVisitAsync(id, record => Show(record, key, null, [], samples)));
        sheet.MapGet("/{kept}", (string id, string kept, VisitDesk desk, DrawnSheets drawn) => desk.OnVisitAsync(id, record =>
            record.Worksheets.FirstOrDefault(s => s.Id == Id.Read<Worksheet>(kept)) is { } known && drawn.Open(known, record.Visit.Id) is { } page
                ? Results.Redirect(page)
                : Pages.NotFound("No such worksheet on this visit.", "It may have been taken off. Open the stage and take one of those it offers.")));
        sheet.MapPost("", (string id, string key, VisitDesk desk, WorksheetSamples samples) => desk.OnFormAsync(id, (record, fields) => TakeAsync(record, key, fields, desk, samples))).GuardForm();
    }

    private static IResult Show(VisitRecord record, string key, string? typed, IReadOnlyList<string> faults, WorksheetSamples samples) => WorksheetForms.Find(key) is { } form
        ? Pages.Show<WorksheetPage>(
            new { Record = record, Form = form, Kept = record.Worksheets.Where(s => string.Equals(s.Form, form.Format, StringComparison.Ordinal) && record.SheetOf(s.Form, s.Name) == s).ToList(), Typed = typed, Faults = faults, Samples = samples.Of(form) },
            faults.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK)
        : Pages.NotFound("No such worksheet.", "Open the stage and take one of those it offers.");

    private static async Task<IResult> TakeAsync(VisitRecord record, string key, FormFields fields, VisitDesk desk, WorksheetSamples samples)
    {
        if (WorksheetForms.Find(key) is not { } form)
        {
            return Show(record, key, null, [], samples);
        }

        var (file, text, missing) = await DocumentAsync(fields, form, samples);
        var (name, faults) = missing.Count > 0 ? ("", [.. missing.Select(WorksheetForms.Words)]) : form.Read(text);
        var sheet = new Worksheet
        {
            Id = fields.NewId<Worksheet>(),
            Visit = record.Visit.Id,
            Stage = form.Stage,
            Form = form.Format,
            Name = name.Length > 0 ? name : file,
            Document = text,
            Reason = fields.Text("reason"),
            On = desk.Today,
        };
        return faults.Count > 0 ? Show(record, key, text, faults, samples) : await desk.KeepAsync(fields, $"{form.Title.ToLowerInvariant()}: {sheet.Name}", record.Visit.Id, form.PageOf(record.Visit.Id), sheet);
    }

    private static async Task<DroppedDocument> DocumentAsync(FormFields fields, WorksheetForm form, WorksheetSamples samples) =>
        samples.Of(form).FirstOrDefault(s => string.Equals(s.File, fields.Text("sample"), StringComparison.Ordinal)) is { Text: not null } sample ? new(sample.Name, sample.Text, [])
        : fields.Text("built").Length > 0 ? new("", PlanFields.Document(fields), [])
        : await DroppedDocument.ReadAsync(fields.Form);
}
