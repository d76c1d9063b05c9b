using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Web.Papers;

/// <summary>The workshop's own pages: the house, people, instruments, authorities.</summary>
internal static class WorkshopEndpoints
{
    public static void MapWorkshop(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/workshop", (VisitDesk desk) => ShowHouseAsync(desk, TypedForm.Blank));
        routes.MapPost("/workshop", (VisitDesk desk) => desk.OnFormAsync(fields => KeepHouseAsync(fields, desk))).GuardForm();
        routes.MapGet("/workshop/authorities", async (VisitDesk desk) => Pages.Show<AuthoritiesPage>(new { (await desk.Record.WorkshopAsync()).House }));
        routes.MapPost("/workshop/authorities", (VisitDesk desk) => desk.OnFormAsync(fields => KeepAuthoritiesAsync(fields, desk))).GuardForm();
        routes.MapInstruments();
        routes.MapPeople();
    }

    private static async Task<IResult> ShowHouseAsync(VisitDesk desk, TypedForm typed) => Pages.Show<WorkshopPage>(
        new { Workshop = await desk.Record.WorkshopAsync(), Size = await desk.Record.SizeAsync(), desk.Today, Typed = typed },
        typed.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);

    private static async Task<IResult> KeepHouseAsync(FormFields fields, VisitDesk desk)
    {
        var house = HouseFields.Read(fields, (await desk.Record.WorkshopAsync()).House) with
        {
            Telephone = fields.Text("telephone"),
            Guarantee = fields.Text("guarantee"),
            Privacy = fields.Text("privacy"),
            Version = fields.Version,
        };
        return fields.Problems.Count > 0 && !desk.AsksForJson
            ? await ShowHouseAsync(desk, new TypedForm(fields.Form, fields.Faults))
            : await desk.KeepAsync(fields, "particulars of the workshop", null, "/workshop", house);
    }

    private static async Task<IResult> KeepAuthoritiesAsync(FormFields fields, VisitDesk desk)
    {
        var house = (await desk.Record.WorkshopAsync()).House;
        var own = Enum.GetValues<HazardTopic>()
            .Select(t => (Key: t.Key(), Words: fields.Text(t.Key())))
            .Where(t => t.Words.Length > 0)
            .ToDictionary(t => t.Key, t => t.Words, StringComparer.Ordinal);
        return await desk.KeepAsync(fields, "whom to defer to", null, "/workshop/authorities", house with { Id = House.TheOne, OwnAuthorities = own, Version = fields.Version });
    }
}
