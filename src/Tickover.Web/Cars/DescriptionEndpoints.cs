using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

internal static class DescriptionEndpoints
{
    private const string ResetField = "reset";
    private const string VersionField = "version";

    public static void MapDescription(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/cars/{id}", (string id, string? barrel, string? done, ICarShelf shelf) => CarEndpoints.FindReadable(id, shelf, shelved =>
            Barrel(shelved.Reading.Car!, barrel, out var chosen)
                ? Show(DescriptionForm.View(shelved, chosen?.Number), Done(done))
                : NoBarrel(shelved)));
        routes.MapPost("/cars/{id}", KeepAsync).GuardForm();
    }

    private static async Task<IResult> KeepAsync(string id, string? barrel, HttpRequest request, ICarShelf shelf)
    {
        var form = await request.ReadFormAsync();
        var typed = form.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);
        if (typed.GetValueOrDefault(ResetField) is { Length: > 0 } reset)
        {
            typed[reset] = "";
        }

        return CarEndpoints.FindReadable(id, shelf, shelved =>
            Barrel(shelved.Reading.Car!, barrel, out var chosen) ? Keep(shelf, shelved, chosen, typed) : NoBarrel(shelved));
    }

    private static IResult Keep(ICarShelf shelf, ShelvedCar shelved, CarBarrel? barrel, Dictionary<string, string> typed)
    {
        if (!string.Equals(typed.GetValueOrDefault(VersionField), DescriptionForm.VersionOf(shelved.Document), StringComparison.Ordinal))
        {
            var stale = new Fault("", "The car was changed elsewhere meanwhile", "", "Look the figures over and keep them again; what is typed here then holds.");
            return Show(DescriptionForm.View(shelved, barrel?.Number, typed, [stale]), null, StatusCodes.Status409Conflict);
        }

        var (reading, changed) = DescriptionForm.Apply(shelved.Reading.Car!, barrel, typed);
        if (reading.Car is not { } car)
        {
            return Show(DescriptionForm.View(shelved, barrel?.Number, typed, reading.Faults), null, StatusCodes.Status422UnprocessableEntity);
        }

        if (changed > 0)
        {
            shelf.Save(shelved.Id, car.Document);
        }

        var query = barrel is null ? "?" : $"?barrel={barrel.Number}&";
        return Results.Redirect($"/cars/{shelved.Id}{query}done={changed.ToString(CultureInfo.InvariantCulture)}");
    }

    private static IResult Show(DescriptionView view, string? notice, int status = StatusCodes.Status200OK) =>
        Pages.Show<DescriptionPage>(new { View = view, Notice = notice }, status);

    private static string? Done(string? done) => done switch
    {
        null => null,
        "document" => "Kept: the document. Undo goes back.",
        "0" => "Nothing was changed.",
        "1" => "Kept: one figure. Undo goes back.",
        _ when int.TryParse(done, NumberStyles.None, CultureInfo.InvariantCulture, out var count) => $"Kept: {count} figures. Undo goes back.",
        _ => null,
    };

    private static bool Barrel(Car car, string? text, out CarBarrel? barrel)
    {
        barrel = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? car.Barrels.FirstOrDefault(b => b.Number == number)
            : null;
        return string.IsNullOrEmpty(text) || barrel is not null;
    }

    private static IResult NoBarrel(ShelvedCar shelved) => Pages.Error(
        StatusCodes.Status400BadRequest,
        "This car has no such barrel.",
        [$"Barrels are numbered 1 to {shelved.Reading.Car!.Barrels.Count}."],
        $"/cars/{shelved.Id}",
        "All barrels");
}
