using System.Globalization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Where on this car a measure is taken.</summary>
public static class Places
{
    private static readonly string[] UsualRuns = ["filler neck", "tank vent", "cross-pipe", "tank to pump", "pump to filter", "filter to carburettors", "return"];

    /// <summary>The places of a kind on the car of a visit, in their order.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="kind">The kind.</param>
    /// <returns>From the car's description, its numbered parts and the readings already taken; at least one.</returns>
    public static IReadOnlyList<Place> Of(VisitRecord record, PlaceKind kind)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (kind == PlaceKind.Car)
        {
            return [Place.WholeCar];
        }

        var known = Described(record, kind);
        if (known.Count == 0)
        {
            known = Numbered(record, kind);
        }

        var used = record.Readings.Where(r => r.Place.Kind == kind && !r.Removed).Select(r => r.Place.Name);
        IEnumerable<string> usual = kind == PlaceKind.Run ? UsualRuns : [];
        List<string> names = [.. known.Concat(usual).Concat(used).Distinct(StringComparer.OrdinalIgnoreCase)];
        return [.. (names.Count == 0 ? [kind == PlaceKind.Tank ? "main" : "1"] : names).Select(name => new Place(kind, name))];
    }

    /// <summary>Whether the car's description does not settle the places, so that another may be named.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="kind">The kind.</param>
    /// <returns>Whether one may be named freely.</returns>
    public static bool MayBeNamed(VisitRecord record, PlaceKind kind)
    {
        ArgumentNullException.ThrowIfNull(record);
        return kind != PlaceKind.Car && Described(record, kind).Count == 0;
    }

    /// <summary>The car of a visit as its document describes it on the day.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The car; null where there is no sound document.</returns>
    public static Car? CarOf(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);

        // An open visit works with what is known by now; a car described only later is at least that car.
        var description = CarAtDate.DescriptionOn(record.Descriptions, LastDay(record)) ?? record.Descriptions.FirstOrDefault(d => !d.Removed);
        return description is null ? null : CarDocument.Read(description.Document).Car;
    }

    private static DateOnly LastDay(VisitRecord record) => record.Visit.LeftOn ?? DateOnly.MaxValue;

    private static IReadOnlyList<string> Described(VisitRecord record, PlaceKind kind)
    {
        if (kind is PlaceKind.Tank or PlaceKind.Run)
        {
            return [];
        }

        if (CarOf(record) is not { } car)
        {
            return Planned(record, kind);
        }

        IEnumerable<int> numbers = kind switch
        {
            PlaceKind.Barrel => car.Barrels.Select(b => b.Number),
            PlaceKind.Carburettor => car.Barrels.Select(b => b.Carburettor),
            PlaceKind.Cylinder => Enumerable.Range(1, car.CylinderCount),
            _ => car.Banks,
        };
        return InOrder(numbers);
    }

    // A car no document describes may have a plan of its engine.
    private static IReadOnlyList<string> Planned(VisitRecord record, PlaceKind kind) => PlanOfVisit.OnSheet(record) is not { } plan
        ? []
        : InOrder(kind switch
        {
            PlaceKind.Barrel => plan.Barrels.Select(b => b.Number),
            PlaceKind.Carburettor => plan.Barrels.Select(b => b.Carburettor),
            PlaceKind.Cylinder => Enumerable.Range(1, plan.Cylinders),
            _ => plan.Barrels.Select(b => b.Bank),
        });

    private static IReadOnlyList<string> InOrder(IEnumerable<int> numbers) => [.. numbers.Distinct().Order().Select(n => n.ToString(CultureInfo.InvariantCulture))];

    private static IReadOnlyList<string> Numbered(VisitRecord record, PlaceKind kind)
    {
        ComponentKind? component = kind switch
        {
            PlaceKind.Tank => ComponentKind.Tank,
            PlaceKind.Carburettor => ComponentKind.Carburettor,
            _ => null,
        };
        var names = record.Components.Where(c => c.Kind == component && WasThere(record, c)).Select(c => c.Place.Trim()).Where(n => n.Length is > 0 and <= Place.LongestName);
        return [.. names.Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)];
    }

    // What came off during the visit was measured as found, so it counts.
    private static bool WasThere(VisitRecord record, Component component) =>
        !component.Removed && (component.FittedOn ?? DateOnly.MinValue) <= LastDay(record) && (component.TakenOffOn ?? DateOnly.MaxValue) >= record.Visit.ArrivedOn;
}
