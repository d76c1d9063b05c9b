using Tickover.Web.Frame;
using Tickover.Web.Gauges;
using Tickover.Web.Linkages;
using Tickover.Web.StripDown;
using Tickover.Web.Walls;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

internal static class CarEndpoints
{
    public static void MapCars(this IEndpointRouteBuilder routes)
    {
        routes.MapLinkages();
        routes.MapWalls();
        routes.MapStripDown();
        routes.MapGauges();
        routes.MapGet("/cars", (ICarShelf shelf, CarRows rows, string? removed) => Pages.Show<CarsPage>(new
        {
            Rows = rows.Of(shelf.List()),
            Removed = CarId.Read(removed)?.Text,
        }));
        routes.MapGet("/cars/new", (Samples samples) => Pages.Show<NewCarPage>(new { Samples = samples.List() }));
        routes.MapPost("/cars", AddAsync).GuardForm();
        routes.MapGet("/cars/{id}/document", (string id, ICarShelf shelf) => Find(id, shelf, shelved => Mend(shelved, shelved.Document, shelved.Reading.Faults)));
        routes.MapPost("/cars/{id}/document", KeepDocumentAsync).GuardForm();
        routes.MapPost("/cars/{id}/undo", UndoAsync).GuardForm();
        routes.MapPost("/cars/{id}/remove", (string id, ICarShelf shelf) => Find(id, shelf, shelved =>
        {
            shelf.Remove(shelved.Id);
            return Results.Redirect($"/cars?removed={shelved.Id}");
        })).GuardForm();
    }

    /// <summary>Runs a page on a document, or says that there is none.</summary>
    public static IResult Find(string id, ICarShelf shelf, Func<ShelvedCar, IResult> page) =>
        CarId.Read(id) is { } known && shelf.Read(known) is { } shelved
            ? page(shelved)
            : Pages.NotFound("No such car here.", "It may have been taken off the list. Look among the cars.");

    /// <summary>Runs a page on a car, or shows what is wrong with its document.</summary>
    public static IResult FindReadable(string id, ICarShelf shelf, Func<ShelvedCar, IResult> page) => Find(id, shelf, shelved =>
        shelved.Reading.Car is null ? Mend(shelved, shelved.Document, shelved.Reading.Faults) : page(shelved));

    private static IResult Mend(ShelvedCar shelved, string text, IReadOnlyList<Fault> faults) => Pages.Show<MendPage>(
        new { Shelved = shelved, Text = text, Faults = faults },
        faults.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> AddAsync(HttpRequest request, ICarShelf shelf, Samples samples)
    {
        var form = await request.ReadFormAsync();
        var text = CarId.Read(form["sample"]) is { } sample ? samples.Read(sample)?.Document ?? "" : form["document"].ToString();
        if (form.Files["file"] is { Length: > 0 and <= ICarShelf.LongestDocument } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = await reader.ReadToEndAsync();
        }

        var reading = text.Length > ICarShelf.LongestDocument
            ? new CarReading(null, [new Fault("", "The document is longer than 1 MB", "some twenty lines", "Take out what is not part of the car.")], [])
            : CarDocument.Read(text);
        if (reading.Car is not { } car)
        {
            return Pages.Show<NewCarPage>(
                new { Text = text, reading.Faults, Samples = samples.List() }, StatusCodes.Status422UnprocessableEntity);
        }

        var id = Free(shelf, CarId.FromName(car.Name));
        shelf.Save(id, text);
        return Results.Redirect($"/cars/{id}/mixture");
    }

    private static CarId Free(ICarShelf shelf, CarId wanted)
    {
        var id = wanted;
        for (var n = 2; shelf.Read(id) is not null; n++)
        {
            id = CarId.FromName($"{wanted} {n}");
        }

        return id;
    }

    private static async Task<IResult> KeepDocumentAsync(string id, HttpRequest request, ICarShelf shelf)
    {
        var form = await request.ReadFormAsync();
        var text = form["document"].ToString();
        return Find(id, shelf, shelved =>
        {
            var reading = CarDocument.Read(text);
            if (reading.Car is null)
            {
                return Mend(shelved, text, reading.Faults);
            }

            shelf.Save(shelved.Id, text);
            return Results.Redirect($"/cars/{shelved.Id}?done=document");
        });
    }

    private static async Task<IResult> UndoAsync(string id, HttpRequest request, ICarShelf shelf)
    {
        var form = await request.ReadFormAsync();
        return CarId.Read(id) is { } known && shelf.Undo(known)
            ? Results.Redirect(Pages.Back(form["back"], $"/cars/{id}/mixture"))
            : Pages.NotFound("Nothing to undo.", "No earlier version of this car is kept.");
    }
}
