using System.Text.Json;
using Tickover.Web.Frame;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>Findings and photographs.</summary>
internal static class FindingEndpoints
{
    private const long LargestUpload = 64L * 1024 * 1024;
    private const int MostMarks = 20;
    private const int LongestNote = 200;

    public static void MapFindings(this IEndpointRouteBuilder visit)
    {
        visit.MapGet("/findings", (string id, VisitDesk desk) => desk.OnVisitAsync(id, record => Pages.Show<FindingsPage>(new { Record = record, desk.Today })));
        visit.MapGet("/findings/new", (string id, string? stage, VisitDesk desk) => desk.OnVisitAsync(id, record => Pages.Show<FindingPage>(new
        {
            Record = record,
            Finding = new Finding { Visit = record.Visit.Id, Severity = Severity.Soon, Stage = Addresses.ReadStage(stage ?? "") ?? Stage.Arrival },
        })));
        visit.MapGet("/findings/{finding:guid}", (string id, string finding, VisitDesk desk) => desk.OnVisitAsync(id, record =>
            record.Findings.FirstOrDefault(f => f.Id == Id.Read<Finding>(finding)) is { } known
                ? Pages.Show<FindingPage>(new { Record = record, Finding = known })
                : Pages.NotFound("No such finding on this visit.", "It may have been taken off; the journal of the visit brings it back.")));
        visit.MapPost("/findings", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => KeepAsync(record, fields, desk))).GuardForm();
        visit.MapPost("/findings/{finding:guid}/remove", (string id, string finding, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
            record.Findings.FirstOrDefault(f => f.Id == Id.Read<Finding>(finding)) is { } known
                ? desk.KeepAsync(fields, $"finding taken off: {known.What}", record.Visit.Id, Addresses.Of(record.Visit.Id), known with { Version = fields.Version, Removed = true })
                : Task.FromResult(desk.Refuse("That finding is not in the record.", Addresses.Of(record.Visit.Id))))).GuardForm();
        visit.MapPost("/photographs", (string id, VisitDesk desk, IPictures pictures) => desk.OnFormAsync(id, (record, fields) => PhotographAsync(record, fields, desk, pictures)))
            .GuardForm(LargestUpload);
    }

    public static void MapPictures(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/photographs/{id:guid}.jpg", (Guid id, IPictures pictures, HttpContext context) => PictureAsync(id, PictureScale.Whole, pictures, context));
        routes.MapGet("/photographs/{id:guid}/whole.jpg", (Guid id, IPictures pictures, HttpContext context) => PictureAsync(id, PictureScale.Whole, pictures, context));
        routes.MapGet("/photographs/{id:guid}/small.jpg", (Guid id, IPictures pictures, HttpContext context) => PictureAsync(id, PictureScale.Small, pictures, context));
    }

    private static async Task<IResult> PictureAsync(Guid id, PictureScale scale, IPictures pictures, HttpContext context)
    {
        if (await pictures.ReadAsync(new Id<Photograph>(id), scale, context.RequestAborted) is not { } picture)
        {
            return Results.NotFound();
        }

        // A picture never changes under its number.
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(picture, "image/jpeg");
    }

    private static Task<IResult> KeepAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var id = fields.NewId<Finding>();
        var state = fields.Choice("state", FindingState.Open);
        var known = record.Findings.FirstOrDefault(f => f.Id == id) ?? new Finding { Id = id, Visit = record.Visit.Id };
        var asked = known with
        {
            Version = fields.Version,
            Stage = fields.Choice("stage", Stage.Arrival),
            Severity = fields.Choice("severity", Severity.Soon),
            What = fields.Needed("what", "Say what was found."),
            Where = fields.Text("where"),
            Detail = fields.Text("detail"),
            State = state,
            Decision = fields.Text("decision"),
            ApprovedBy = fields.Text("approvedBy"),
            SettledOn = fields.Day("settledOn", "On") ?? (state == FindingState.Open ? null : desk.Today),
        };
        return desk.KeepAsync(fields, $"finding: {asked.What}", record.Visit.Id, Addresses.Of(record.Visit.Id, id), asked);
    }

    private static async Task<IResult> PhotographAsync(VisitRecord record, FormFields fields, VisitDesk desk, IPictures pictures)
    {
        var finding = fields.Named<Finding>("finding");
        var stage = fields.Choice("stage", Stage.Arrival);
        var of = Place.Read(fields.Text("of"));
        var back = (finding, of) switch
        {
            ({ } shown, _) => Addresses.Of(record.Visit.Id, shown),
            (_, { Kind: PlaceKind.Carburettor } carburettor) => Addresses.Card(record.Visit.Id, stage, carburettor),
            _ => $"{Addresses.Of(record.Visit.Id, stage)}#work",
        };
        if (fields.Form.Files["file"] is not { Length: > 0 } file)
        {
            return desk.Refuse("No photograph came with the form. Choose one and keep it again.", back);
        }

        var id = fields.NewId<Photograph>();
        await using var stream = file.OpenReadStream();
        var intake = await pictures.TakeInAsync(id, stream);
        if (intake.Refusal is { } refusal)
        {
            return desk.Refuse(refusal, back);
        }

        var photograph = new Photograph
        {
            Id = id,
            Visit = record.Visit.Id,
            Stage = stage,
            Finding = finding,
            Of = of,
            Caption = fields.Text("caption"),
            Marks = Marks(fields),
            Hash = intake.Hash,
            Width = intake.Width,
            Height = intake.Height,
        };
        return await desk.KeepAsync(fields, photograph.Caption.Length > 0 ? $"photograph: {photograph.Caption}" : "photograph", record.Visit.Id, back, photograph);
    }

    private static IReadOnlyList<PhotographMark> Marks(FormFields fields)
    {
        var text = fields.Text("marks");
        if (text.Length == 0)
        {
            return [];
        }

        try
        {
            var marks = JsonSerializer.Deserialize<List<PhotographMark>>(text, JsonSerializerOptions.Web) ?? [];
            return [.. marks.Where(IsInside).Take(MostMarks).Select(m => m with { Note = (m.Note ?? "").Length > LongestNote ? m.Note![..LongestNote] : m.Note ?? "" })];
        }
        catch (JsonException)
        {
            fields.Complain("The arrows on the photograph could not be read. Draw them again.");
            return [];
        }
    }

    private static bool IsInside(PhotographMark mark) => new[] { mark.FromX, mark.FromY, mark.ToX, mark.ToY }.All(p => p is >= 0 and <= 1);
}
