using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>Search over everything in the record.</summary>
internal static class FindEndpoints
{
    private const int LongestQuery = 200;

    public static void MapFind(this IEndpointRouteBuilder routes) => routes.MapGet("/find", async (string? q, VisitDesk desk, CancellationToken cancellation) =>
    {
        var query = (q ?? "").Trim();
        query = query.Length > LongestQuery ? query[..LongestQuery] : query;
        return Pages.Show<FindPage>(new { Query = query, Groups = query.Length == 0 ? [] : await GroupsAsync(desk.Record, query, cancellation) });
    });

    private static async Task<IReadOnlyList<FindGroup>> GroupsAsync(IRecord record, string query, CancellationToken cancellation)
    {
        var found = await record.SearchAsync(query, cancellation);
        var cars = (await record.AllAsync<CustomerCar>(cancellation)).ToDictionary(c => c.Id);
        var visits = (await record.AllAsync<Visit>(cancellation)).Where(v => !v.Removed).ToDictionary(v => v.Id);
        var standing = found.Where(f => f.Visit is not { } visit || visits.ContainsKey(visit)).Select(f => (Found: f, Car: CarOf(f, cars))).ToList();
        return
        [
            .. from pair in standing
               where pair.Car is not { Removed: true }
               group pair.Found by pair.Car into car
               select new FindGroup(
                   car.Key?.Name ?? "Without a car",
                   car.Key is null ? "" : $"/cars/{car.Key.Slug}/history",
                   [.. car.Select(f => new FindHit(Kind(f.Kind), f.Text, Address(f, car.Key)))]),
        ];
    }

    // An owner belongs to no car in the index; the first car of his is where to look.
    private static CustomerCar? CarOf(FoundItem found, Dictionary<Id<CustomerCar>, CustomerCar> cars) =>
        found.Car is { } id ? cars.GetValueOrDefault(id)
        : found.Kind is nameof(Owner) ? cars.Values.FirstOrDefault(c => !c.Removed && c.Owner?.Value == found.Key)
        : null;

    private static string Kind(string kind) => kind switch
    {
        nameof(CustomerCar) => "Car",
        nameof(WorkNote) => "Note",
        nameof(PartLine) => "Part",
        nameof(Approval) => "Question",
        _ => kind,
    };

    private static string Address(FoundItem found, CustomerCar? car) => (found.Kind, found.Visit) switch
    {
        (nameof(Finding), { } visit) => Addresses.Of(visit, new Id<Finding>(found.Key)),
        (nameof(PartLine), { } visit) => $"{Addresses.Of(visit)}/papers#parts",
        (nameof(Approval), { } visit) => $"{Addresses.Of(visit)}/papers#approvals",
        (_, { } visit) => Addresses.Of(visit),
        _ => car is null ? "/find" : $"/cars/{car.Slug}/history",
    };
}
