using Tickover.Web.Frame;
using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Api;

/// <summary>What the pages do, for programs: JSON in and out, problem details where it cannot be done.</summary>
internal static class ApiEndpoints
{
    /// <summary>Longest body taken anywhere, bytes.</summary>
    public const long LongestBody = FormGuard.LongestForm;

    private const string Cars = "Cars";
    private const string Mixture = "Mixture";
    private static readonly (string Name, string About) Barrel = ("barrel", "Which barrel, a whole number from 1; 1 where it is left out.");
    private static readonly int[] OfBench = [StatusCodes.Status400BadRequest, StatusCodes.Status404NotFound, StatusCodes.Status422UnprocessableEntity];

    public static void MapApi(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup(Faults.ApiRoot);
        api.MapRecordApi();
        api.MapGet("/cars", (ICarShelf shelf) => shelf.List().Select(CarAnswer.Of))
            .Describe<IEnumerable<CarAnswer>>("listCars", Cars, "Lists the cars.");
        api.MapGet("/cars/{id}", (string id, ICarShelf shelf) => Find(id, shelf, shelved => Results.Json(CarAnswer.Of(shelved))))
            .Describe<CarAnswer>("readCar", Cars, "Tells of one car, and what is wrong with its document.", StatusCodes.Status404NotFound);
        api.MapGet("/cars/{id}/mixture", (string id, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, (bench, _) => Results.Json(MixtureAnswer.Of(bench.FittedMap, bench.Barrel.Number))))
            .Describe<MixtureAnswer>("readMixture", Mixture, "Tells the mixture over speed and throttle, as fitted.", OfBench)
            .WithQuery(Barrel);
        api.MapGet("/cars/{id}/explain", (string id, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, (bench, _) => Results.Json(ExplainAnswer.Of(bench.FittedPoint))))
            .Describe<ExplainAnswer>("explainPoint", Mixture, "Shows the working of the mixture at one point.", OfBench)
            .WithQuery(Barrel, ("rpm", "Engine speed, 100 to 20,000 rpm."), ("throttle", "Degrees from the seated plate, 0 to 90."));
        api.MapPost("/cars/{id}/trial", (string id, TrialQuestion question, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, Trial, question))
            .Describe<TrialAnswer>(
                "tryChanges", Mixture, "Works out what a change of parts would do; nothing is changed.",
                [.. OfBench, StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType])
            .WithQuery(Barrel);
    }

    private static IResult Trial(Bench bench, TrialQuestion? question) => bench.TrialMap is null
        ? Results.Problem(
            title: bench.TrialFaults.Count > 0 ? "The trial cannot be worked out." : "There is nothing on trial.",
            detail: "Give changes as a list of part and value, such as idleJet and 55.",
            statusCode: StatusCodes.Status422UnprocessableEntity,
            extensions: new Dictionary<string, object?>(StringComparer.Ordinal) { ["faults"] = bench.TrialFaults })
        : Results.Json(new TrialAnswer(
            MixtureAnswer.Of(bench.FittedMap, bench.Barrel.Number),
            MixtureAnswer.Of(bench.TrialMap, bench.Barrel.Number),
            ExplainAnswer.Of(bench.FittedPoint),
            ExplainAnswer.Of(bench.TrialPoint!),
            bench.TrialMilliseconds!.Value));

    private static IResult Find(string id, ICarShelf shelf, Func<ShelvedCar, IResult> answer) =>
        CarId.Read(id) is { } known && shelf.Read(known) is { } shelved
            ? answer(shelved)
            : Results.Problem(title: "No such car here.", detail: "GET /api/cars lists those that are.", statusCode: StatusCodes.Status404NotFound);

    private static IResult Open(
        string id, HttpRequest request, ICarShelf shelf, BenchDesk desk, Func<Bench, TrialQuestion?, IResult> answer, TrialQuestion? question = null) =>
        Find(id, shelf, shelved =>
        {
            var (query, problems) = BenchQueryReader.Read(request.Query);
            if (shelved.Reading.Car is null)
            {
                return Bad("The car's document has faults.", shelved.Reading.Faults, StatusCodes.Status422UnprocessableEntity);
            }

            if (problems.Count > 0)
            {
                return Bad("The query cannot be used.", problems, StatusCodes.Status400BadRequest);
            }

            return desk.Open(shelved, question?.Onto(query) ?? query) is { } bench
                ? answer(bench, question)
                : Bad("No such barrel.", $"This car has barrels 1 to {shelved.Reading.Car.Barrels.Count}.", StatusCodes.Status400BadRequest);
        });

    private static IResult Bad(string title, object faults, int status) => Results.Problem(
        title: title, statusCode: status, extensions: new Dictionary<string, object?>(StringComparer.Ordinal) { ["faults"] = faults });
}
