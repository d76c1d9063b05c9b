using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads one of the two tanks.</summary>
internal static class TankReader
{
    private const double Mm = 1e-3, SquareCm = 1e-4;
    private const double BaffleDamping = 0.3;

    private static readonly Dictionary<string, TankVent> Vents = new(StringComparer.Ordinal) { ["free"] = TankVent.Free, ["shared"] = TankVent.Shared, ["blocked"] = TankVent.Blocked };

    public static LinkedTank? Read(ObjectReader root, string name)
    {
        if (root[name] is null)
        {
            root.Faults.Missing(name, $"The {name} tank", "plan areas over height, inside width and length, and where its middle is", $"\"{name}\": {{ \"areas\": [[0, 800], [230, 1200]], \"width\": 280, \"length\": 380, \"middle\": {(name is "left" ? "450" : "-450")} }}");
        }

        if (root.Object(name, GaugeForm.Tank) is not { } reader)
        {
            return null;
        }

        var sections = Sections(reader);
        var (width, length) = (reader.Needed("width", GaugeForm.Span), reader.Needed("length", GaugeForm.Span));
        var middle = reader.Needed("middle", GaugeForm.Offset);
        var port = reader.Numbers("port", (2, 2), GaugeForm.Offset);
        var tank = (reader.Number("ahead", GaugeForm.Offset) ?? 0, reader.Number("floor", GaugeForm.Offset) ?? 0, reader.Word("vent", Vents, TankVent.Free), reader.Flag("baffle"));
        return root.Faults.All.Count > 0 || sections is null ? null : new LinkedTank
        {
            Table = LevelTable.FromAreas(sections),
            WidthMetres = width * Mm,
            LengthMetres = length * Mm,
            LeftMetres = middle * Mm,
            AheadMetres = tank.Item1 * Mm,
            FloorMetres = tank.Item2 * Mm,
            Port = port is null ? default : new TankPlace(port[0] * Mm, port[1] * Mm, 0),
            Vent = tank.Item3,
            SloshDamping = tank.Item4 ? BaffleDamping : LinkedTank.PlainDamping,
        };
    }

    private static (double HeightMetres, double AreaSquareMetres)[]? Sections(ObjectReader reader)
    {
        const string example = "[[0, 800], [230, 1200]]";
        if (reader["areas"] is null)
        {
            reader.Faults.Missing(reader.At("areas"), "The plan areas", "two or more pairs: height above the floor in mm, plan area in cm²", $"\"areas\": {example}");
        }

        if (reader.List("areas", example) is not { } items)
        {
            return null;
        }

        var read = items.Take(60).Select((item, i) => Pair(reader, item, i)).ToArray();
        if (!Array.TrueForAll(read, r => r is not null))
        {
            return null;
        }

        var pairs = read.OfType<(double Height, double Area)>().ToArray();
        if (pairs.Length < 2 || pairs[0].Height != 0 || !Rising(pairs))
        {
            reader.Faults.Add(reader.At("areas"), "The heights do not rise from 0, or no fuel finds room between two of them", "two or more pairs, heights rising from 0", $"Write them from the floor up: \"areas\": {example}.");
            return null;
        }

        return [.. pairs.Select(p => (p.Height * Mm, p.Area * SquareCm))];
    }

    private static bool Rising((double Height, double Area)[] pairs) =>
        Enumerable.Range(1, pairs.Length - 1).All(i => pairs[i].Height > pairs[i - 1].Height && pairs[i].Area + pairs[i - 1].Area > 0);

    private static (double Height, double Area)? Pair(ObjectReader reader, SourceNode item, int i)
    {
        var path = $"{reader.At("areas")}[{i}]";
        if (item.Kind == SourceKind.List && item.Items.Count == 2
            && LinkageNumbers.Number(item.Items[0], path + "[0]", GaugeForm.Height, reader.Faults) is { } height
            && LinkageNumbers.Number(item.Items[1], path + "[1]", GaugeForm.Area, reader.Faults) is { } area)
        {
            return (height, area);
        }

        if (item.Kind != SourceKind.List || item.Items.Count != 2)
        {
            reader.Faults.WrongKind(path, item, "a pair: height in mm, area in cm²", "[50, 1050]");
        }

        return null;
    }
}
