using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;
using Tickover.Workshop.Walls;
using Tickover.Workshop.Walls.Reading;

namespace Tickover.Workshop.Leaks.Reading;

/// <summary>Reads a document into a leak test, or into everything that is wrong with it.</summary>
internal static class LeakReader
{
    private const double PascalsPerMillibar = 100;
    private const string ReadingsExample = "[{ \"minutes\": 0, \"pressure\": 20.0, \"temperature\": 18.4 }, { \"minutes\": 15, \"pressure\": 19.8, \"temperature\": 18.3 }]";

    public static LeakDocumentReading Read(string json)
    {
        var (reader, faults) = DocumentRoot.Open(json, "leak", LeakForm.Format, LeakForm.Root);
        if (reader is null)
        {
            return new LeakDocumentReading(null, faults);
        }

        var sheet = Sheet(json, reader);
        return new LeakDocumentReading(reader.Faults.All.Count > 0 ? null : sheet, reader.Faults.All);
    }

    private static LeakSheet? Sheet(string json, ObjectReader root)
    {
        var name = LinkReader.Named(root);
        var volume = Needed(root, "volume", LeakForm.Volume, "\"volume\": { \"litres\": 48, \"within\": 3 }", "The volume of the tank");
        var (unit, error) = Gauge(root);
        var readings = Readings(root, unit);
        var temperatures = readings.Count(r => r.Celsius is not null);
        if (temperatures > 0 && temperatures < readings.Count)
        {
            root.Faults.Add("readings", $"{readings.Count - temperatures} of {readings.Count} readings have no temperature", "a temperature with every reading, or with none", "Write the temperature with each reading; without it a drop proves nothing.");
        }

        var (thermometer, drift) = Thermometer(root, temperatures > 0 ? LeakSheet.UsualDrift : LeakSheet.DriftUnread);
        var sheet = new LeakSheet
        {
            Name = name ?? string.Empty,
            Document = json,
            Litres = volume?.Needed("litres", LeakForm.Litres) ?? double.NaN,
            LitresWithin = (volume?.Number("within", LeakForm.Within) ?? LeakForm.UsualWithin) / 100,
            Panel = Panel(root),
            Unit = unit,
            GaugeErrorPascals = error,
            ThermometerError = thermometer,
            DriftKelvins = drift,
            BarometerPascals = (root.Number("barometer", LeakForm.Barometer) ?? LeakForm.UsualBarometer) * PascalsPerMillibar,
            Readings = readings,
            LimitMillibarLitres = root.Number("limit", LeakForm.Limit),
        };
        return root.Faults.All.Count > 0 ? null : sheet;
    }

    private static (double Error, double Drift) Thermometer(ObjectReader root, double usualDrift)
    {
        var reader = root.Object("thermometer", LeakForm.Thermometer);
        return (reader?.Number("error", LeakForm.Kelvins) ?? LeakForm.UsualThermometer, reader?.Number("drift", LeakForm.Kelvins) ?? usualDrift);
    }

    private static (PressureUnit Unit, double ErrorPascals) Gauge(ObjectReader root)
    {
        var usual = PressureUnit.All[0];
        if (Needed(root, "gauge", LeakForm.Gauge, "\"gauge\": { \"unit\": \"mbar\", \"error\": 0.05 }", "The gauge") is not { } gauge)
        {
            return (usual, 1);
        }

        var allowed = string.Join(", ", PressureUnit.All.Select(u => $"\"{u.Name}\""));
        if (gauge["unit"] is null)
        {
            root.Faults.Missing(gauge.At("unit"), "The gauge's unit", allowed, "\"unit\": \"mbar\"");
            return (usual, 1);
        }

        var text = gauge.Text("unit", "mbar") ?? string.Empty;
        if (PressureUnit.Read(text) is not { } unit)
        {
            var near = Spelling.Nearest(text, PressureUnit.All.Select(u => u.Name));
            root.Faults.Add(gauge.At("unit"), $"\"{text}\" is no unit of pressure known here", allowed, near is null ? "Write one of these." : $"Did you mean \"{near}\"?");
            return (usual, 1);
        }

        return (unit, gauge.Needed("error", LeakForm.Error(unit)) * unit.Pascals);
    }

    private static LeakPanel? Panel(ObjectReader root)
    {
        if (root.Object("panel", LeakForm.Panel) is not { } reader)
        {
            return null;
        }

        if (reader["sides"] is null)
        {
            root.Faults.Missing(reader.At("sides"), "The panel's sides", "[mm, mm]", "\"sides\": [300, 250]");
        }

        var metal = Metals.Needed(reader, "metal", MetalWords.OfWalls);
        var thickness = reader.Needed("thickness", LeakForm.Thickness);
        return reader.Numbers("sides", (2, 2), LeakForm.Side) is { } sides
            ? new LeakPanel(metal, sides.Min(), sides.Max(), thickness, reader.Number("stress", LeakForm.Stress))
            : null;
    }

    private static List<LeakMoment> Readings(ObjectReader root, PressureUnit unit)
    {
        if (root["readings"] is null)
        {
            root.Faults.Missing("readings", "The readings", "two and more", $"\"readings\": {ReadingsExample}");
        }

        var items = root.List("readings", ReadingsExample) ?? [];
        if (root["readings"] is not null && items.Count is < 2 or > LeakForm.MostReadings)
        {
            root.Faults.Add("readings", $"{items.Count} readings", $"2 to {LeakForm.MostReadings}", "Read the gauge at the beginning and at the end at least; every few minutes is better.");
        }

        var moments = new List<LeakMoment>();
        foreach (var (item, i) in items.Take(LeakForm.MostReadings).Select((item, i) => (item, i)))
        {
            if (item.Kind != SourceKind.Object)
            {
                root.Faults.WrongKind($"readings[{i}]", item, "an object in braces", "{ \"minutes\": 0, \"pressure\": 20.0 }");
                continue;
            }

            moments.Add(Moment(new ObjectReader(item, $"readings[{i}]", LeakForm.Moment, root.Faults), unit));
            Ordered(moments, $"readings[{i}].minutes", root.Faults);
        }

        return moments;
    }

    private static LeakMoment Moment(ObjectReader reader, PressureUnit unit) => new(
        reader.Needed("minutes", LeakForm.Minutes),
        reader.Needed("pressure", LeakForm.Pressure(unit)) * unit.Pascals,
        reader.Number("temperature", LeakForm.Celsius),
        reader.Number("barometer", LeakForm.Barometer) * PascalsPerMillibar);

    private static void Ordered(List<LeakMoment> moments, string path, Faults faults)
    {
        if (moments.Count > 1 && moments[^1].Minutes <= moments[^2].Minutes)
        {
            faults.Add(path, $"This time is not after the one before ({moments[^2].Minutes.ToString(System.Globalization.CultureInfo.InvariantCulture)} min)", "times that rise", "A test takes time: write the minutes from the beginning, each reading later than the last.");
        }
    }

    private static ObjectReader? Needed(ObjectReader root, string name, IReadOnlyList<string> known, string example, string what)
    {
        if (root[name] is null)
        {
            root.Faults.Missing(name, what, "an object in braces", example);
        }

        return root.Object(name, known);
    }
}
