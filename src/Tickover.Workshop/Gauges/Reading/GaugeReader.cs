using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads a document into a story, or into everything that is wrong with it.</summary>
internal static class GaugeReader
{
    private const string Kind = "gauge";
    private const double Litre = 1e-3;

    private static readonly Dictionary<string, TankVents> Vents = new(StringComparer.Ordinal)
    {
        ["free"] = TankVents.Free,
        ["shared"] = TankVents.Shared,
        ["left blocked"] = TankVents.LeftBlocked,
        ["right blocked"] = TankVents.RightBlocked,
        ["both blocked"] = TankVents.BothBlocked,
    };

    public static GaugeReadingResult Read(string json)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new GaugeReadingResult(null, [syntax!]);
        }

        var faults = new Faults(Kind);
        var example = $"\"format\": \"{GaugeForm.Format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + example + ", … }");
            return new GaugeReadingResult(null, faults.All);
        }

        if (root["format"] is not { Kind: SourceKind.Text, Text: GaugeForm.Format })
        {
            if (root["format"] is { } other)
            {
                faults.WrongKind("format", other, $"\"{GaugeForm.Format}\", the one format this version reads", example);
            }
            else
            {
                faults.Missing("format", "The marker of a gauge document", $"\"{GaugeForm.Format}\"", example);
            }

            return new GaugeReadingResult(null, faults.All);
        }

        var story = Story(json, new ObjectReader(root, string.Empty, GaugeForm.Root, faults));
        return new GaugeReadingResult(faults.All.Count > 0 ? null : story, faults.All);
    }

    private static GaugeStory? Story(string json, ObjectReader root)
    {
        var name = LinkReader.Named(root);
        var (left, right) = (TankReader.Tank(root, "left", TankSide.Left), TankReader.Tank(root, "right", TankSide.Right));
        var pipe = TankReader.Pipe(root);
        var sender = SenderReader.Sender(root);
        var gauge = SenderReader.Gauge(root, sender?.Family);
        var draw = SenderReader.Draw(root);
        var vents = root.Word("vents", Vents, TankVents.Free);
        var (startLeft, startRight) = Fuel(root, left, right);
        var (roadName, road) = RoadReader.Read(root);
        return root.Faults.All.Count > 0 || left is null || right is null || pipe is null || sender is null || gauge is null || road is null ? null : new GaugeStory
        {
            Name = name!,
            Document = json,
            Tanks = new TwoTanks(left, right, pipe) { Sender = sender.Value.Sender, Gauge = gauge, Draw = draw, Vents = vents },
            Start = (startLeft * Litre, startRight * Litre),
            RoadName = roadName,
            Road = road,
        };
    }

    private static (double Left, double Right) Fuel(ObjectReader root, LinkedTank? left, LinkedTank? right)
    {
        if (Member(root, "fuel", GaugeForm.Fuel, "\"fuel\": { \"left\": 12, \"right\": 12 }") is not { } reader)
        {
            return default;
        }

        var (inLeft, inRight) = (reader.Needed("left", GaugeForm.Litres), reader.Needed("right", GaugeForm.Litres));
        foreach (var (side, litres, tank) in new[] { ("left", inLeft, left), ("right", inRight, right) })
        {
            if (tank is not null && litres * Litre > tank.Table.CapacityCubicMetres)
            {
                reader.Faults.Add(reader.At(side), FormattableString.Invariant($"{litres:0.#} L are more than the tank holds"), FormattableString.Invariant($"up to {tank.Table.CapacityCubicMetres / Litre:0.#} L, by the areas given"), "Check the areas over the height, or the fuel.");
            }
        }

        return (inLeft, inRight);
    }

    /// <summary>An object that must be there.</summary>
    public static ObjectReader? Member(ObjectReader root, string name, IReadOnlyList<string> known, string example)
    {
        if (root[name] is null)
        {
            root.Faults.Missing(root.At(name), $"The member \"{name}\"", "an object in braces", example);
        }

        return root.Object(name, known);
    }
}
