using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>The first run of an empty record, and the way out of the demonstration.</summary>
internal static class BeginEndpoints
{
    private const int FewestDigits = 4;
    private const int MostDigits = 8;

    public static void MapBegin(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/begin", async (VisitDesk desk, WebAppOptions options) =>
        {
            var workshop = await desk.Record.WorkshopAsync();
            return IsBegun(workshop) ? Results.Redirect("/workshop") : Show(workshop.House, options, null);
        });
        routes.MapPost("/begin", (VisitDesk desk, WebAppOptions options, IPins pins) => desk.OnFormAsync(fields => BeginAsync(fields, desk, options, pins))).GuardForm();
        routes.MapPost("/begin/demonstration", LoadAsync).GuardForm();
        routes.MapGet("/demonstration", async (VisitDesk desk) => Pages.Show<DemonstrationPage>(new { IsIn = (await desk.Record.WorkshopAsync()).House.Demonstration }));
        routes.MapPost("/demonstration/remove", (VisitDesk desk, WebAppOptions options) => desk.OnFormAsync(async fields =>
            DemonstrationLoader.Documents(options.SamplesFolder) is { } documents && (await desk.Record.WorkshopAsync()).House.Demonstration
                ? await desk.KeepAsync(await DemonstrationLoader.RemovalAsync(desk.Record, documents, fields.Key, desk.Device), "/demonstration")
                : desk.Refuse("The demonstration is not in this record.", "/"))).GuardForm();
    }

    private static bool IsBegun(WorkshopRecord workshop) => workshop.House.Name.Length > 0 || workshop.People.Any(p => !p.Removed);

    private static IResult Show(House house, WebAppOptions options, TypedForm? typed) => Pages.Show<BeginPage>(
        new { House = house, HasDemonstration = DemonstrationLoader.Has(options.SamplesFolder), Typed = typed ?? TypedForm.Blank },
        typed is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> LoadAsync(VisitDesk desk, WebAppOptions options)
    {
        if (IsBegun(await desk.Record.WorkshopAsync()))
        {
            return desk.Refuse("This record is begun already; the demonstration would mix with your own cars.", "/");
        }

        if (DemonstrationLoader.Documents(options.SamplesFolder) is not { } documents)
        {
            return desk.Refuse("The documents of its cars are not at hand here.", "/begin");
        }

        return await DemonstrationLoader.LoadAsync(desk.Record, documents, desk.Today) is { } refusal ? desk.Refuse(refusal, "/begin") : Results.Redirect("/");
    }

    private static async Task<IResult> BeginAsync(FormFields fields, VisitDesk desk, WebAppOptions options, IPins pins)
    {
        var workshop = await desk.Record.WorkshopAsync();
        if (IsBegun(workshop))
        {
            return Results.Redirect("/workshop");
        }

        var house = HouseFields.Read(fields, workshop.House) with { Version = fields.Version };
        var person = PeopleEndpoints.Read(fields, new Person { Id = fields.NewId<Person>() }, workshop.People);
        var pin = fields.Text("pin");
        if (pin.Length is < FewestDigits or > MostDigits || !pin.All(char.IsAsciiDigit))
        {
            fields.Complain("pin", "A PIN is 4 to 8 digits.");
        }

        if (fields.Problems.Count > 0)
        {
            return Show(workshop.House, options, new TypedForm(fields.Form, fields.Faults));
        }

        var outcome = await desk.Record.KeepAsync(new Act { Key = fields.Key, Items = [house, person], Words = "the workshop begun", Person = person.Id, Device = desk.Device });
        if (!outcome.IsKept)
        {
            return desk.Refuse(outcome.Words, "/begin");
        }

        return await pins.SetAsync(person.Id, pin, null) is { } wrong ? desk.Refuse(wrong, "/workshop/people") : Results.Redirect("/");
    }
}
