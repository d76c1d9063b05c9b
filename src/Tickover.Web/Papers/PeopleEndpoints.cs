using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>Those who work in the workshop, and the PINs they sign with.</summary>
internal static class PeopleEndpoints
{
    private const string Here = "/workshop/people";
    private const int FewestLetters = 2;
    private const int MostLetters = 4;

    public static void MapPeople(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Here, (VisitDesk desk, IPins pins) => ShowAsync(desk, pins, null));
        routes.MapPost(Here, (VisitDesk desk, IPins pins) => desk.OnFormAsync(fields => KeepAsync(fields, desk, pins))).GuardForm();
        routes.MapPost($"{Here}/pin", (HttpContext context, VisitDesk desk, IPins pins) => desk.OnFormAsync(fields => PinAsync(context, fields, desk, pins))).GuardForm();
        routes.MapPost($"{Here}/remove", (VisitDesk desk) => desk.OnFormAsync(async fields =>
            Find(await desk.Record.WorkshopAsync(), fields) is { } known
                ? await desk.KeepAsync(fields, $"{known.Initials} works here no longer", null, Here, known with { Version = fields.Version, Removed = true })
                : desk.Refuse("That person is not in the record.", Here))).GuardForm();
    }

    /// <summary>The person as the form has it; initials have to be nobody else's.</summary>
    public static Person Read(FormFields fields, Person person, IReadOnlyList<Person> people)
    {
        var initials = fields.Text("initials").ToUpperInvariant();
        if (initials.Length is < FewestLetters or > MostLetters || !initials.All(char.IsLetter))
        {
            fields.Complain("initials", "Initials are two to four letters.");
        }
        else if (people.FirstOrDefault(p => !p.Removed && p.Id != person.Id && string.Equals(p.Initials, initials, StringComparison.OrdinalIgnoreCase)) is { } other)
        {
            fields.Complain("initials", $"{initials} are the initials of {other.Name}. Add a letter to tell the two apart.");
        }

        return person with { Name = fields.Needed("personName", "The person needs a name."), Initials = initials, Role = fields.Text("role") };
    }

    private static Person? Find(WorkshopRecord workshop, FormFields fields) => workshop.People.FirstOrDefault(p => !p.Removed && p.Id == fields.Named<Person>("id"));

    private static async Task<IResult> ShowAsync(VisitDesk desk, IPins pins, TypedForm? typed)
    {
        var people = (await desk.Record.WorkshopAsync()).People.Where(p => !p.Removed).ToList();
        var known = new HashSet<Id<Person>>();
        foreach (var person in people)
        {
            if (await pins.HasPinAsync(person.Id))
            {
                known.Add(person.Id);
            }
        }

        return Pages.Show<PeoplePage>(
            new { People = people, HasPin = known, Typed = typed ?? TypedForm.Blank },
            typed is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> KeepAsync(FormFields fields, VisitDesk desk, IPins pins)
    {
        var people = (await desk.Record.WorkshopAsync()).People;
        var id = fields.NewId<Person>();
        var asked = Read(fields, people.FirstOrDefault(p => p.Id == id) ?? new Person { Id = id }, people) with { Version = fields.Version };
        return fields.Problems.Count > 0 && !desk.AsksForJson
            ? await ShowAsync(desk, pins, new TypedForm(fields.Form, fields.Faults, Here))
            : await desk.KeepAsync(fields, $"{asked.Initials}, {asked.Name}", null, Here, asked);
    }

    private static async Task<IResult> PinAsync(HttpContext context, FormFields fields, VisitDesk desk, IPins pins)
    {
        if (Find(await desk.Record.WorkshopAsync(), fields) is not { } person)
        {
            return desk.Refuse("That person is not in the record.", Here);
        }

        var pin = fields.Text("pin");
        var wrong = string.Equals(pin, fields.Text("again"), StringComparison.Ordinal)
            ? await pins.SetAsync(person.Id, pin, fields.Text("current") is { Length: > 0 } current ? current : null)
            : "The two new PINs are not alike. Type them again.";
        if (wrong is not null)
        {
            fields.Complain($"pin-{person.Id}", wrong);
            return await ShowAsync(desk, pins, new TypedForm(fields.Form, fields.Faults, $"{Here}/pin"));
        }

        Notice.Leave(context, $"{person.Initials} signs with the new PIN from now on.");
        return Results.Redirect(Here);
    }
}
