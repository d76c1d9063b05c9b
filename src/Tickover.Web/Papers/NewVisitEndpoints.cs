using Tickover.Web.Cars;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>A car comes in: a known one or a new one, its owner, and what is asked and promised.</summary>
internal static class NewVisitEndpoints
{
    private const int FirstYear = 1885;
    private const int MostShown = 30;

    public static void MapNewVisit(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/visits/new", async (string? q, string? car, VisitDesk desk, Samples samples) =>
            await ShowAsync(desk, samples, (q ?? "").Trim(), Id.Read<CustomerCar>(car), TypedForm.Blank));
        routes.MapPost("/visits/new", (VisitDesk desk, Samples samples) => desk.OnFormAsync(fields => KeepAsync(fields, desk, samples))).GuardForm();
    }

    private static async Task<IResult> ShowAsync(VisitDesk desk, Samples samples, string query, Id<CustomerCar>? chosen, TypedForm typed)
    {
        var cars = (await desk.Record.AllAsync<CustomerCar>()).Where(c => !c.Removed).ToList();
        var owners = (await desk.Record.AllAsync<Owner>()).Where(o => !o.Removed).OrderBy(o => o.Name, StringComparer.CurrentCultureIgnoreCase).ToList();
        if (chosen is not null && cars.TrueForAll(c => c.Id != chosen))
        {
            return Pages.NotFound("No such car here.", "It may have been taken off. Look among the cars, or take it in as a new one.");
        }

        var names = owners.ToDictionary(o => o.Id, o => o.Name);
        return Pages.Show<NewVisitPage>(
            new
            {
                Chosen = cars.Find(c => c.Id == chosen),
                Known = cars.Where(c => Answers(c, c.Owner is { } owner ? names.GetValueOrDefault(owner, "") : "", query)).OrderBy(c => c.Name, StringComparer.CurrentCultureIgnoreCase).Take(MostShown).ToList(),
                Owners = owners,
                Samples = samples.List(),
                Query = query,
                (await desk.Record.WorkshopAsync()).House.Currency,
                Typed = typed,
            },
            typed.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    // A registration is found with and without its gaps.
    private static bool Answers(CustomerCar car, string owner, string query) => query.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word =>
        $"{car.Name} {car.Registration} {car.Registration.Replace(" ", "", StringComparison.Ordinal)} {car.ChassisNumber} {owner}".Contains(word, StringComparison.CurrentCultureIgnoreCase));

    private static async Task<IResult> KeepAsync(FormFields fields, VisitDesk desk, Samples samples)
    {
        var known = fields.Named<CustomerCar>("car") is { } id ? await desk.Record.FindAsync(id) : null;
        var car = known ?? NewCar(fields, await desk.Record.AllAsync<CustomerCar>());
        var typed = BriefFields.Owner(fields, null);
        var owner = typed?.Id ?? fields.Named<Owner>("owner") ?? known?.Owner;
        var visit = BriefFields.Visit(fields, new Visit { Id = fields.NewId<Visit>(), Car = car.Id, Owner = owner, ArrivedOn = desk.Today });
        var description = known is null ? Description(fields, samples, car, desk.Today) : null;
        RecordItem?[] items = [typed, Owned(known, car, owner), description, visit];
        return fields.Problems.Count > 0 && !desk.AsksForJson
            ? await ShowAsync(desk, samples, "", known?.Id, new TypedForm(fields.Form, fields.Faults))
            : await desk.KeepAsync(fields, $"{car.Name} taken in", visit.Id, Addresses.Of(visit.Id), [.. items.OfType<RecordItem>()]);
    }

    private static CustomerCar NewCar(FormFields fields, IReadOnlyList<CustomerCar> cars)
    {
        var name = fields.Needed("carName", "Say what the car is called, or choose one that is known here.");
        var year = fields.Whole("year", "Year");
        if (year is { } built && (built < FirstYear || built > DateTime.UtcNow.Year + 1))
        {
            fields.Complain("year", $"Year: {built} is no year a car was built in.");
        }

        var slug = CarId.FromName(name);
        for (var n = 2; cars.Any(c => string.Equals(c.Slug, slug.Text, StringComparison.Ordinal)); n++)
        {
            slug = CarId.FromName($"{name} {n}");
        }

        return new CustomerCar
        {
            Slug = slug.Text,
            Name = name,
            Registration = fields.Text("registration"),
            ChassisNumber = fields.Text("chassisNumber"),
            Year = year,
            OdometerUnit = fields.Choice("odometerUnit", OdometerUnit.Miles),
        };
    }

    // A known car is kept again only where it changed hands.
    private static CustomerCar? Owned(CustomerCar? known, CustomerCar car, Id<Owner>? owner) => known is null || known.Owner != owner ? car with { Owner = owner } : null;

    private static CarDescription? Description(FormFields fields, Samples samples, CustomerCar car, DateOnly today) => Document(fields, samples) is { Length: > 0 } document
        ? new CarDescription { Car = car.Id, Since = today, Document = document, Reason = "as described on arrival" }
        : null;

    private static string Document(FormFields fields, Samples samples)
    {
        var text = fields.Text("document");
        if (text.Length == 0)
        {
            return CarId.Read(fields.Text("sample")) is { } sample ? samples.Read(sample)?.Document ?? "" : "";
        }

        var reading = CarDocument.Read(text);
        if (reading.Car is null)
        {
            fields.Complain("document", string.Join(" ", reading.Faults.Select(f => $"{f.Path}: {f.Problem}. {f.WhatToDo}".TrimStart(':', ' '))));
        }

        return text;
    }
}
