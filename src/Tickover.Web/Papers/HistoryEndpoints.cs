using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Papers;

/// <summary>A car over the years.</summary>
internal static class HistoryEndpoints
{
    public static void MapHistory(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/cars/{slug}/history", (string slug, string? on, VisitDesk desk) => OnCarAsync(slug, desk, async history => Pages.Show<HistoryPage>(new
        {
            History = history,
            At = CarAtDate.Of(history, DateOnly.TryParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : desk.Today),
            Drifts = Drift.Of(history),
            (await desk.Record.WorkshopAsync()).House.Units,
            desk.Today,
        })));
        routes.MapGet("/cars/{slug}/descriptions/{description}", (string slug, string description, VisitDesk desk) => OnCarAsync(slug, desk, history => Task.FromResult(
            history.Descriptions.FirstOrDefault(d => d.Id == Id.Read<CarDescription>(description)) is { } known
                ? Pages.Show<OldDescriptionPage>(new { history.Car, Description = known })
                : Pages.NotFound("No such description of this car.", "The history of the car lists those that are kept."))));
    }

    private static async Task<IResult> OnCarAsync(string slug, VisitDesk desk, Func<CarHistory, Task<IResult>> page)
    {
        var car = (await desk.Record.AllAsync<CustomerCar>()).FirstOrDefault(c => !c.Removed && string.Equals(c.Slug, slug, StringComparison.Ordinal));
        return car is not null && await desk.Record.CarAsync(car.Id) is { } history
            ? await page(history)
            : Pages.NotFound("No such car here.", "It may have been taken off the list. Look among the cars.");
    }
}
