using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Web.Frame;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>The owner's account and the set-up card, from the record alone; the signature under them; the car going home.</summary>
internal static class AccountEndpoints
{
    // Beyond this many the small pictures are printed, so that the account can still be mailed.
    private const int MostWholePictures = 12;

    public static void MapAccount(this IEndpointRouteBuilder visit)
    {
        visit.MapGet("/account", (string id, VisitDesk desk, IPictures pictures, HttpContext context) => HtmlAsync(id, desk, pictures, context, HandOverDocument.Of));
        visit.MapGet("/card", (string id, VisitDesk desk, IPictures pictures, HttpContext context) => HtmlAsync(id, desk, pictures, context, SetUpCardDocument.Of));
        visit.MapGet("/account.pdf", (string id, string? paper, VisitDesk desk, IPictures pictures, HttpContext context) => PdfAsync(id, paper, desk, pictures, context, HandOverDocument.Of));
        visit.MapGet("/card.pdf", (string id, string? paper, VisitDesk desk, IPictures pictures, HttpContext context) => PdfAsync(id, paper, desk, pictures, context, SetUpCardDocument.Of));
        visit.MapPost("/signature", (string id, VisitDesk desk, IPins pins) => desk.OnFormAsync(id, (record, fields) => SignAsync(record, fields, desk, pins))).GuardForm();
        visit.MapPost("/leave", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => LeaveAsync(record, fields, desk))).GuardForm();
    }

    private static Task<IResult> HtmlAsync(
        string id, VisitDesk desk, IPictures pictures, HttpContext context, Func<VisitRecord, HandOverSettings, PaperDocument> document) => desk.OnVisitAsync(id, async record =>
        {
            var html = PaperHtml.Write(document(record, await SettingsAsync(record, desk, pictures, context)));

            // The paper carries its own style and pictures, so that it can be saved and mailed as one file.
            context.Response.Headers.ContentSecurityPolicy = $"default-src 'none'; style-src {PaperHtml.StyleSource}; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
            return Results.Text(html, "text/html; charset=utf-8");
        });

    private static Task<IResult> PdfAsync(
        string id, string? paper, VisitDesk desk, IPictures pictures, HttpContext context, Func<VisitRecord, HandOverSettings, PaperDocument> document) => desk.OnVisitAsync(id, async record =>
        {
            var content = document(record, await SettingsAsync(record, desk, pictures, context));
            using var file = new MemoryStream();
            PaperPdf.Write(content, Enum.TryParse<PaperSize>(paper, ignoreCase: true, out var size) && Enum.IsDefined(size) ? size : record.Workshop.House.Paper, file);
            return Results.File(file.ToArray(), "application/pdf", $"{content.FileName}.pdf");
        });

    private static async Task<HandOverSettings> SettingsAsync(VisitRecord record, VisitDesk desk, IPictures pictures, HttpContext context)
    {
        var shown = record.Photographs.Where(p => p.InHandOver).ToList();
        var scale = shown.Count > MostWholePictures ? PictureScale.Small : PictureScale.Whole;
        var read = new Dictionary<Id<Photograph>, byte[]>();
        foreach (var photograph in shown)
        {
            if (await pictures.ReadAsync(photograph.Id, scale, context.RequestAborted) is { } picture)
            {
                read[photograph.Id] = picture;
            }
        }

        return new HandOverSettings
        {
            On = record.Visit.LeftOn ?? desk.Today,
            Address = $"{context.Request.Scheme}://{context.Request.Host}{Addresses.Of(record.Visit.Id)}",
            Picture = read.GetValueOrDefault,
        };
    }

    private static async Task<IResult> SignAsync(VisitRecord record, FormFields fields, VisitDesk desk, IPins pins)
    {
        var back = Addresses.Of(record.Visit.Id, Stage.HandOver);
        if (fields.Named<Person>("person") is not { } person || record.Workshop.People.All(p => p.Id != person || p.Removed))
        {
            return desk.Refuse("Choose who signs.", back);
        }

        if (await pins.TryAsync(person, fields.Text("pin")) is { } wrong)
        {
            return desk.Refuse(wrong, back);
        }

        var signature = new Signature { Id = fields.NewId<Signature>(), Visit = record.Visit.Id, Person = person, On = desk.Today, For = "The work described was done as written here." };
        return await desk.KeepAsync(fields, $"account signed by {record.Workshop.InitialsOf(person)}", record.Visit.Id, back, signature);
    }

    private static Task<IResult> LeaveAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var leaves = fields.Text("leave") is not "back";
        var asked = record.Visit with
        {
            Version = fields.Version,
            LeftOn = leaves ? fields.Day("leftOn", "Went home on") ?? desk.Today : null,
            OdometerOut = leaves ? fields.Whole("odometerOut", "Odometer") ?? record.Visit.OdometerOut : record.Visit.OdometerOut,
        };
        return desk.KeepAsync(
            fields, leaves ? $"{record.Car.Name} went home" : $"{record.Car.Name} is here again", record.Visit.Id, Addresses.Of(record.Visit.Id, Stage.HandOver), asked);
    }
}
