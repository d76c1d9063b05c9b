using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Cars;

/// <summary>Says of every car on the shelf what its mixture does.</summary>
/// <param name="desk">Surveys the cars.</param>
public sealed class CarRows(BenchDesk desk)
{
    /// <summary>The rows of the first page.</summary>
    /// <param name="shelf">The documents.</param>
    /// <returns>A row for each, those that cannot be read last.</returns>
    public IReadOnlyList<CarRow> Of(IReadOnlyList<ShelvedCar> shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return [.. shelf.OrderBy(s => s.Reading.Car is null).Select(Row)];
    }

    private CarRow Row(ShelvedCar shelved)
    {
        if (shelved.Reading.Car is not { } car)
        {
            return new CarRow(shelved, shelved.Id.Text, "", "", "");
        }

        var map = desk.Survey(car).Map;
        var kinds = map.Barrels.Select(b => (b.BarrelNumber, Furthest: FurthestPoint.Of(map, b.BarrelNumber))).ToList();
        var (barrel, _) = kinds.MaxBy(k => Math.Abs(k.Furthest.Beyond));
        var note = kinds.Count == 1 ? "" : $"{kinds.Count} kinds of barrel differ; this is the furthest from target.";
        return new CarRow(
            shelved,
            car.Name,
            $"{car.Layout}, {Counted(car.CylinderCount, "cylinder")}, {Counted(car.Barrels.Count, "barrel")}",
            Drawings.Sentence(map, barrel),
            note);
    }

    private static string Counted(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
