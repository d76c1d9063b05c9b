using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Gauges.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges;

/// <summary>Reads gauge documents: JSON, format <c>tickover-gauge-1</c>; docs/gauge-document.md.</summary>
public static class GaugeDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = GaugeForm.Format;

    /// <summary>Largest document, bytes.</summary>
    public const int LargestBytes = SourceParser.LargestBytes;

    private const string Kind = "gauge";
    private const double Litre = 1e-3;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>Tanks and gauge, or all faults.</returns>
    public static GaugeReading Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new GaugeReading(null, [syntax!]);
        }

        var faults = new Faults(Kind);
        var example = $"\"format\": \"{Format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + example + ", … }");
        }
        else if (root["format"] is not { Kind: SourceKind.Text, Text: Format })
        {
            faults.Add("format", "This is no gauge document", $"\"{Format}\", the one format this version reads", $"Write {example} first.");
        }

        var setup = faults.All.Count > 0 ? null : Setup(json, new ObjectReader(root, string.Empty, GaugeForm.Root, faults));
        return new GaugeReading(faults.All.Count > 0 ? null : setup, faults.All);
    }

    private static GaugeSetup? Setup(string json, ObjectReader root)
    {
        var name = root.Text("name", "Larkfield Tern 2800, tanks and gauge");
        if (root["name"] is null)
        {
            root.Faults.Missing("name", "The name", "a text", "\"name\": \"Larkfield Tern 2800, tanks and gauge\"");
        }

        var (left, right) = (TankReader.Read(root, "left"), TankReader.Read(root, "right"));
        var pipe = FittingReader.Pipe(root);
        var draw = FittingReader.Draw(root);
        var fitting = FittingReader.Fitting(root);
        var road = RoadReader.Read(root);
        var start = root.Numbers("start", (2, 2), GaugeForm.Litres);
        if (root["start"] is null)
        {
            root.Faults.Missing("start", "The fuel at the start", "litres in the left and in the right tank", "\"start\": [12, 12]");
        }

        if (root.Faults.All.Count > 0 || left is null || right is null || pipe is null || fitting is null || road is null || start is null)
        {
            return null;
        }

        Room(root, left, start[0], 0);
        Room(root, right, start[1], 1);
        return new GaugeSetup
        {
            Name = name!,
            Document = json,
            Pair = new TwoTanks(left, right, pipe) { Draw = draw, Fitting = fitting },
            Start = (start[0] * Litre, start[1] * Litre),
            Road = road,
        };
    }

    private static void Room(ObjectReader root, LinkedTank tank, double litres, int which)
    {
        var room = tank.Table.CapacityCubicMetres / Litre;
        if (litres > room)
        {
            root.Faults.Add($"start[{which}]", FormattableString.Invariant($"{litres} L do not go into this tank"), FormattableString.Invariant($"0 to {room:0.0} L, what its areas hold"), "Check the litres, or the areas.");
        }
    }
}
