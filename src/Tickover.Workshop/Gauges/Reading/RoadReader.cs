using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads the road: a manoeuvre or drawn stretches.</summary>
internal static class RoadReader
{
    private const double Step = 0.01;
    private const double KilometrePerHour = 1 / 3.6;
    private const double MostSeconds = 4 * 3600;
    private static readonly string[] Names = ["circle", "roundabouts", "lane change", "avoidance"];
    private static readonly Dictionary<string, string> Known = Names.ToDictionary(n => n, n => n, StringComparer.Ordinal);
    private static readonly Dictionary<string, int> Bends = new(StringComparer.Ordinal) { ["left"] = 1, ["right"] = -1 };

    public static (string Name, RoadTrace? Road) Read(ObjectReader root)
    {
        if (GaugeReader.Member(root, "road", GaugeForm.Road, "\"road\": { \"manoeuvre\": \"roundabouts\", \"speed\": 28, \"radius\": 16 }") is not { } reader)
        {
            return ("", null);
        }

        if (reader["drawn"] is not null)
        {
            return ("drawn road", Drawn(reader));
        }

        if (reader["manoeuvre"] is null)
        {
            reader.Faults.Missing(reader.At("manoeuvre"), "The manoeuvre, or a drawn road", string.Join(", ", Names.Select(n => $"\"{n}\"")), "\"manoeuvre\": \"roundabouts\"");
            return ("", null);
        }

        var name = reader.Word("manoeuvre", Known, Names[0]);
        var figures = new RoadFigures(
            Math.Max(1, reader.Number("speed", GaugeForm.Speed) ?? 0) * KilometrePerHour,
            reader["speed"] is not null,
            reader.Number("radius", GaugeForm.Radius),
            reader.Number("turns", GaugeForm.Turns) ?? 1.5,
            reader.Number("seconds", GaugeForm.Seconds) ?? 25,
            reader.Number("carWidth", GaugeForm.Width) ?? 1.7,
            reader["toLeft"] is null || reader.Flag("toLeft"));
        return reader.Faults.All.Count > 0 ? (name, null) : (name, Manoeuvre(name, figures));
    }

    /// <summary>A manoeuvre by its name.</summary>
    public static RoadTrace Manoeuvre(string name, RoadFigures f)
    {
        const double lead = 10;
        const double tail = 90;
        if (name is "lane change" or "avoidance")
        {
            var course = name is "avoidance" ? LaneChange.Avoidance(f.CarWidth) : LaneChange.Severe(f.CarWidth);
            return course.Drive(f.SpeedGiven ? f.Speed : course.UsualSpeedMetresPerSecond, Step, lead, tail);
        }

        return name is "circle"
            ? Manoeuvres.SteadyCircle(f.SpeedGiven ? f.Speed : 18, f.Radius ?? Manoeuvres.SteadyRadiusMetres, f.ToLeft, f.Seconds, lead, tail, Step)
            : Manoeuvres.Roundabouts(f.SpeedGiven ? f.Speed : 7.5, f.Radius ?? 16, f.Turns, 20, Step).Then(RoadTrace.Standing(60, Step));
    }

    private static RoadTrace? Drawn(ObjectReader reader)
    {
        var items = reader.List("drawn", "[{ \"length\": 200, \"speed\": 50 }]") ?? [];
        var parts = new List<RoadSegment>();
        if (items.Count is 0 or > GaugeForm.MostStretches)
        {
            reader.Faults.Add(reader.At("drawn"), $"{items.Count} stretches", $"1 to {GaugeForm.MostStretches}", "Describe each with a length and a speed, or with the seconds the car stands.");
            return null;
        }

        for (var i = 0; i < items.Count; i++)
        {
            if (items[i].Kind != SourceKind.Object)
            {
                reader.Faults.WrongKind($"{reader.At("drawn")}[{i}]", items[i], "an object in braces", "{ \"length\": 200, \"speed\": 50 }");
                continue;
            }

            parts.Add(Stretch(new ObjectReader(items[i], $"{reader.At("drawn")}[{i}]", GaugeForm.Stretch, reader.Faults)));
        }

        if (reader.Faults.All.Count > 0)
        {
            return null;
        }

        if (parts.Sum(p => p.SpeedMetresPerSecond > 0 ? p.LengthMetres / p.SpeedMetresPerSecond : p.StandsSeconds) > MostSeconds)
        {
            reader.Faults.Add(reader.At("drawn"), "The drive takes more than four hours", "up to four hours", "Draw a shorter road.");
            return null;
        }

        return DrawnRoad.Drive(parts, Step);
    }

    private static RoadSegment Stretch(ObjectReader r)
    {
        var stands = r.Number("stands", GaugeForm.Seconds);
        var radius = r.Number("radius", GaugeForm.Radius);
        return new RoadSegment
        {
            StandsSeconds = stands ?? 0,
            SpeedMetresPerSecond = stands is null ? Math.Max(1, r.Needed("speed", GaugeForm.Speed)) * KilometrePerHour : 0,
            LengthMetres = stands is null ? r.Needed("length", GaugeForm.Length) : 0,
            CurvatureToLeft = radius is { } known ? r.Word("bend", Bends, 1) / known : 0,
            Grade = (r.Number("grade", GaugeForm.Slope) ?? 0) / 100,
            Camber = (r.Number("camber", GaugeForm.Slope) ?? 0) / 100,
        };
    }
}
