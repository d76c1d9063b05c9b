using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads the road: a manoeuvre by its name, or pieces.</summary>
internal static class RoadReader
{
    private const double KmPerHour = 1 / 3.6;
    private const int MostPieces = 400;

    private static readonly Dictionary<string, int> Turns = new(StringComparer.Ordinal) { ["left"] = 1, ["right"] = -1 };

    public static GaugeRoad? Read(ObjectReader root)
    {
        if (root["road"] is null)
        {
            return GaugeRoad.Of(Manoeuvre.LongBend, null, null, null);
        }

        if (root.Object("road", GaugeForm.Road) is not { } reader)
        {
            return null;
        }

        var speed = reader.Number("speed", GaugeForm.Speed) * KmPerHour;
        var (radius, after) = (reader.Number("radius", GaugeForm.Radius), reader.Number("after", GaugeForm.Seconds));
        if (reader["pieces"] is not null)
        {
            return Pieces(reader);
        }

        var manoeuvre = reader.Word("manoeuvre", GaugeRoad.ByName, Manoeuvre.LongBend);
        return root.Faults.All.Count > 0 ? null : GaugeRoad.Of(manoeuvre, speed, radius, after);
    }

    private static GaugeRoad? Pieces(ObjectReader reader)
    {
        const string example = "[{ \"seconds\": 20, \"speed\": 50, \"radius\": 60, \"turns\": \"left\" }]";
        var items = reader.List("pieces", example);
        if (items is not null && items.Count is 0 or > MostPieces)
        {
            reader.Faults.Add(reader.At("pieces"), $"{items!.Count} pieces", $"1 to {MostPieces}", $"Write \"pieces\": {example}.");
        }

        var read = (items ?? []).Take(MostPieces).Select((node, i) => Piece(node, $"{reader.At("pieces")}[{i}]", reader.Faults)).ToArray();
        return reader.Faults.All.Count > 0 ? null : new GaugeRoad("The road as drawn", DrawnRoad.Of([.. read.OfType<RoadPiece>()]));
    }

    private static RoadPiece? Piece(SourceNode node, string path, Faults faults)
    {
        if (node.Kind != SourceKind.Object)
        {
            faults.WrongKind(path, node, "a piece in braces", "{ \"seconds\": 20, \"speed\": 50 }");
            return null;
        }

        var reader = new ObjectReader(node, path, GaugeForm.Piece, faults);
        var (seconds, speed) = (reader.Needed("seconds", GaugeForm.Seconds), reader.Needed("speed", GaugeForm.Speed) * KmPerHour);
        var curvature = reader.Number("radius", GaugeForm.Radius) is { } radius ? reader.Word("turns", Turns, 1) / radius : 0;
        var (slope, camber) = (reader.Number("slope", GaugeForm.Slope) ?? 0, reader.Number("camber", GaugeForm.Slope) ?? 0);
        return faults.All.Count > 0 ? null : new RoadPiece(seconds, speed, reader.Number("to", GaugeForm.Speed) * KmPerHour ?? speed, curvature, slope / 100, camber / 100);
    }
}
