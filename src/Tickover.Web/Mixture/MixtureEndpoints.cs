using Microsoft.AspNetCore.Components;
using Tickover.Reports.Mixture;
using Tickover.Web.Cars;
using Tickover.Web.Frame;
using Tickover.Web.Jets;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Mixture;

internal static class MixtureEndpoints
{
    /// <summary>A script that only wants the work and not the page around it says so by this header.</summary>
    private const string FragmentHeader = "X-Tickover-Fragment";

    public static void MapMixture(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/cars/{id}/mixture", (string id, HttpContext context, ICarShelf shelf, BenchDesk desk, Drawings drawings) =>
            Open<MixturePage, MixtureBench>(id, context, shelf, desk, drawings));
        routes.MapGet("/cars/{id}/jets", (string id, HttpContext context, ICarShelf shelf, BenchDesk desk, Drawings drawings) =>
            Open<JetsPage, JetsBench>(id, context, shelf, desk, drawings));
        routes.MapGet("/cars/{id}/mixture/table", (string id, HttpContext context, ICarShelf shelf, BenchDesk desk, Drawings drawings) =>
            Open<TablePage, TablePage>(id, context, shelf, desk, drawings));
        routes.MapPost("/cars/{id}/fit", (string id, HttpContext context, ICarShelf shelf) => Fit(id, context, shelf)).GuardForm();
    }

    private static IResult Open<TPage, TWork>(string id, HttpContext context, ICarShelf shelf, BenchDesk desk, Drawings drawings)
        where TPage : IComponent
        where TWork : IComponent => CarEndpoints.FindReadable(id, shelf, shelved =>
    {
        var (query, problems) = BenchQueryReader.Read(context.Request.Query);
        if (problems.Count > 0)
        {
            return Wrong(problems, shelved);
        }

        if (desk.Open(shelved, query) is not { } bench)
        {
            return Wrong([$"barrel: this car has barrels 1 to {shelved.Reading.Car!.Barrels.Count}, not {query.Barrel}."], shelved);
        }

        bench = bench with { Screen = ScreenOf(context.Request.Headers[FragmentHeader]) };
        drawings.Prepare(bench, PictureSize.Phone);
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.Vary = FragmentHeader;
        var status = bench.TrialFaults.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK;
        return context.Request.Headers.ContainsKey(FragmentHeader)
            ? Pages.Show<TWork>(new { Bench = bench }, status)
            : Pages.Show<TPage>(new { Bench = bench }, status);
    });

    private static Screen ScreenOf(string? fragment) => fragment switch
    {
        "wide" => Screen.Wide,
        "narrow" => Screen.Narrow,
        _ => Screen.Any,
    };

    private static IResult Wrong(IReadOnlyList<string> problems, ShelvedCar shelved) => Pages.Error(
        StatusCodes.Status400BadRequest, "That place cannot be looked up.", problems, $"/cars/{shelved.Id}/mixture", "Mixture");

    private static IResult Fit(string id, HttpContext context, ICarShelf shelf) => CarEndpoints.FindReadable(id, shelf, shelved =>
    {
        var (query, problems) = BenchQueryReader.Read(context.Request.Query);
        var car = shelved.Reading.Car!;
        if (problems.Count > 0 || query.Changes.Count == 0 || car.Barrels.FirstOrDefault(b => b.Number == query.Barrel) is not { } barrel)
        {
            return Wrong(problems.Count > 0 ? problems : ["There is nothing on trial to fit."], shelved);
        }

        var reading = BenchDesk.Apply(car, barrel, query);
        if (reading.Car is not { } changed)
        {
            return Wrong([.. reading.Faults.Select(f => $"{f.Path}: {f.Problem}. {f.WhatToDo}")], shelved);
        }

        shelf.Save(shelved.Id, changed.Document);
        return Results.Redirect($"/cars/{shelved.Id}/jets{query.Plain().ToAddress()}");
    });
}
