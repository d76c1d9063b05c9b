using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Papers;

/// <summary>The instruments of the workshop.</summary>
internal static class InstrumentEndpoints
{
    private const string Here = "/workshop/instruments";

    public static void MapInstruments(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Here, (VisitDesk desk) => ShowAsync(desk, null));
        routes.MapPost(Here, (VisitDesk desk) => desk.OnFormAsync(fields => KeepAsync(fields, desk))).GuardForm();
        routes.MapPost($"{Here}/remove", (VisitDesk desk) => desk.OnFormAsync(async fields =>
            (await desk.Record.WorkshopAsync()).Find(fields.Named<Instrument>("id")) is { } known
                ? await desk.KeepAsync(fields, $"instrument given up: {known.Name}", null, Here, known with { Version = fields.Version, Removed = true })
                : desk.Refuse("That instrument is not in the record.", Here))).GuardForm();
    }

    private static async Task<IResult> ShowAsync(VisitDesk desk, TypedForm? typed) => Pages.Show<InstrumentsPage>(
        new { (await desk.Record.WorkshopAsync()).Instruments, desk.Today, Typed = typed ?? TypedForm.Blank },
        typed is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> KeepAsync(FormFields fields, VisitDesk desk)
    {
        var id = fields.NewId<Instrument>();
        var known = (await desk.Record.WorkshopAsync()).Find(id) ?? new Instrument { Id = id };
        var asked = known with
        {
            Name = fields.Needed("name", "The instrument needs a name."),
            SerialNumber = fields.Text("serialNumber"),
            GoodTo = fields.Text("goodTo"),
            CalibratedOn = fields.Day("calibratedOn", "Last compared on"),
            DueOn = fields.Day("dueOn", "Due again on"),
            Note = fields.Text("note"),
            Version = fields.Version,
        };
        if (asked.GoodTo.Length > 0 && !MeasureCatalogue.All.Any(m => GoodToText.Read(m, asked.GoodTo) is not null))
        {
            fields.Complain("goodTo", $"\"{asked.GoodTo}\" cannot be read as an accuracy. Write a figure with its unit, such as ±0.25 kg/h or ±2 %.");
        }

        if (asked.DueOn < asked.CalibratedOn)
        {
            fields.Complain("dueOn", "Due again on: that day is before it was last compared.");
        }

        return fields.Problems.Count > 0 && !desk.AsksForJson
            ? await ShowAsync(desk, new TypedForm(fields.Form, fields.Faults, Here))
            : await desk.KeepAsync(fields, $"instrument: {asked.Name}", null, Here, asked);
    }
}
