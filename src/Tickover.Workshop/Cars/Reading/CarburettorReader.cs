using System.Globalization;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads the carburettors and their barrels.</summary>
internal static class CarburettorReader
{
    private const string Example = "[{ \"barrels\": [{ \"feeds\": [1] }, { \"feeds\": [2] }] }]";

    /// <summary>Reads all barrels.</summary>
    /// <param name="root">The document.</param>
    /// <param name="cylinders">Number of cylinders; 0 where it is faulty.</param>
    /// <returns>The barrels in order; those of faulty places are reported and left out.</returns>
    public static IReadOnlyList<BarrelSource> Read(ObjectReader root, int cylinders)
    {
        var forAll = BarrelSettingsReader.Read(root.Object("barrels", DocumentForm.Settings));
        if (root["carburettors"] is null)
        {
            root.Faults.Missing("carburettors", "The list of carburettors", $"1 to {DocumentForm.MostCylinders} carburettors with their barrels", $"\"carburettors\": {Example}");
            return [];
        }

        var items = root.List("carburettors", Example) ?? [];
        if (root["carburettors"]!.Kind == SourceKind.List && items.Count is 0 or > DocumentForm.MostCylinders)
        {
            root.Faults.Add("carburettors", $"{items.Count} carburettors", $"1 to {DocumentForm.MostCylinders}", $"Write {Example}.");
        }

        var barrels = new List<BarrelSource>();
        for (var i = 0; i < Math.Min(items.Count, DocumentForm.MostCylinders); i++)
        {
            ReadOne(root, new Place(i, Indexed("carburettors", i), items[i], cylinders), forAll, barrels);
        }

        if (barrels.Count > DocumentForm.MostCylinders)
        {
            root.Faults.Add("carburettors", $"{barrels.Count} barrels", $"at most {DocumentForm.MostCylinders} barrels in all", "Take out what the engine does not have.");
        }

        return barrels;
    }

    private static void ReadOne(ObjectReader root, Place place, BarrelSettings forAll, List<BarrelSource> barrels)
    {
        if (place.Node.Kind != SourceKind.Object)
        {
            root.Faults.WrongKind(place.Path, place.Node, "a carburettor in braces", "{ \"barrels\": [{}, {}] }");
            return;
        }

        var carburettor = new ObjectReader(place.Node, place.Path, DocumentForm.Carburettor, root.Faults);
        _ = carburettor.Text("name", "front");
        var settings = BarrelSettingsReader.Read(carburettor).Over(forAll);
        var items = carburettor.List("barrels", "[{}, {}]");
        if (carburettor["barrels"] is null || items?.Count is 0 or > DocumentForm.MostCylinders)
        {
            root.Faults.Add(carburettor.At("barrels"), items is null ? "The barrels are missing" : $"{items.Count} barrels", $"1 to {DocumentForm.MostCylinders} barrels", "Write \"barrels\": [{}, {}], one pair of braces for each barrel.");
        }

        for (var j = 0; j < Math.Min(items?.Count ?? 0, DocumentForm.MostCylinders); j++)
        {
            var path = Indexed(carburettor.At("barrels"), j);
            if (items![j].Kind != SourceKind.Object)
            {
                root.Faults.WrongKind(path, items[j], "a barrel in braces", "{ \"feeds\": [1] }");
                continue;
            }

            var barrel = new ObjectReader(items[j], path, DocumentForm.Barrel, root.Faults);
            barrels.Add(new BarrelSource
            {
                Carburettor = place.Index + 1,
                Path = path,
                Feeds = place.Cylinders == 0 ? null : barrel.CylinderNumbers("feeds", place.Cylinders, "[1]"),
                SaysFeeds = barrel["feeds"] is not null,
                Settings = BarrelSettingsReader.Read(barrel).Over(settings),
            });
        }
    }

    private static string Indexed(string path, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");

    private sealed record Place(int Index, string Path, SourceNode Node, int Cylinders);
}
