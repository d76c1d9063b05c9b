using Tickover.Web.Frame;
using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Api;

/// <summary>What the pages do, for programs: JSON in and out, problem details where it cannot be done.</summary>
internal static class ApiEndpoints
{
    /// <summary>Longest body taken anywhere, bytes.</summary>
    public const long LongestBody = FormGuard.LongestForm;

    public static void MapApi(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup(Faults.ApiRoot);
        api.MapGet("/cars", (ICarShelf shelf) => shelf.List().Select(CarAnswer.Of));
        api.MapGet("/cars/{id}", (string id, ICarShelf shelf) => Find(id, shelf, shelved => Results.Json(CarAnswer.Of(shelved))));
        api.MapGet("/cars/{id}/mixture", (string id, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, (bench, _) => Results.Json(MixtureAnswer.Of(bench.FittedMap, bench.Barrel.Number))));
        api.MapGet("/cars/{id}/explain", (string id, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, (bench, _) => Results.Json(ExplainAnswer.Of(bench.FittedPoint))));
        api.MapPost("/cars/{id}/trial", (string id, TrialQuestion question, HttpRequest request, ICarShelf shelf, BenchDesk desk) =>
            Open(id, request, shelf, desk, Trial, question));
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
