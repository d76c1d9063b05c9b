using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Reads shafts and carburettors.</summary>
internal sealed class ShaftReader(ObjectReader root)
{
    public static readonly IReadOnlyDictionary<string, TurningSense> Senses = new Dictionary<string, TurningSense>(StringComparer.Ordinal)
    {
        ["clockwise"] = TurningSense.Clockwise,
        ["anticlockwise"] = TurningSense.Anticlockwise,
    };

    private static readonly Dictionary<string, ShaftMount> Mounts = new(StringComparer.Ordinal) { ["body"] = ShaftMount.Body, ["manifold"] = ShaftMount.Manifold };
    private static readonly Dictionary<string, ShaftMetal> Metals = new(StringComparer.Ordinal) { ["steel"] = ShaftMetal.Steel, ["brass"] = ShaftMetal.Brass };

    /// <summary>All shafts, those of carburettors last.</summary>
    public IReadOnlyList<ShaftPart> Read()
    {
        foreach (var name in new[] { "shafts", "carburettors" })
        {
            if (root[name] is null)
            {
                root.Faults.Missing(name, $"The list of {name}", "at least one, with its levers", $"\"{name}\": [{{ … }}]");
            }
        }

        var shafts = Items("shafts", LinkageForm.Shaft).Select(s => Shaft(s, ShaftMount.Body))
            .Concat(Items("carburettors", LinkageForm.Carburettor).Select(c => Shaft(c, ShaftMount.Manifold) is { } shaft ? shaft with { Throttle = Throttle(c) } : null))
            .OfType<ShaftPart>()
            .ToArray();
        foreach (var twice in shafts.GroupBy(s => s.Name, StringComparer.Ordinal).Where(g => g.Skip(1).Any()))
        {
            root.Faults.Add("shafts", $"\"{twice.Key}\" is the name of {twice.Count()} shafts", "each shaft and carburettor a name of its own", "Rename one of them.");
        }

        return shafts;
    }

    private List<ObjectReader> Items(string list, IReadOnlyList<string> known)
    {
        var items = root.List(list, "[{ … }]") ?? [];
        if (root[list] is { Kind: SourceKind.List } && items.Count is 0 or > LinkageForm.MostShafts)
        {
            root.Faults.Add(list, $"{items.Count} {list}", $"1 to {LinkageForm.MostShafts}", "Describe each with a name, a place, an axis and its levers.");
        }

        return [.. Objects(list, items.Take(LinkageForm.MostShafts), known)];
    }

    private IEnumerable<ObjectReader> Objects(string path, IEnumerable<SourceNode> items, IReadOnlyList<string> known)
    {
        foreach (var (item, i) in items.Select((item, i) => (item, i)))
        {
            if (item.Kind == SourceKind.Object)
            {
                yield return new ObjectReader(item, $"{path}[{i}]", known, root.Faults);
            }
            else
            {
                root.Faults.WrongKind($"{path}[{i}]", item, "an object in braces", "{ \"name\": \"…\", … }");
            }
        }
    }

    private ShaftPart? Shaft(ObjectReader reader, ShaftMount usually)
    {
        var (name, at, axis) = (LinkReader.Named(reader), reader.Place("at"), reader.Direction("axis"));
        var levers = Levers(reader);
        var mount = reader.Word("mount", Mounts, usually);
        var (diameter, metal) = (reader.Number("diameter", NumberLimit.Diameter), reader.Word("metal", Metals, ShaftMetal.Steel));
        return name is null || at is null || axis is null ? null : new ShaftPart
        {
            Name = name,
            At = at.Value,
            Axis = axis.Value,
            Mount = mount,
            Levers = levers,
            DiameterMillimetres = diameter,
            Metal = metal,
        };
    }

    private List<LeverPart> Levers(ObjectReader shaft)
    {
        var items = shaft.List("levers", "[{ \"name\": \"lever\", \"length\": 30, \"angle\": 90 }]") ?? [];
        if (items.Count > LinkageForm.MostLevers)
        {
            shaft.Faults.Add(shaft.At("levers"), $"{items.Count} levers", $"at most {LinkageForm.MostLevers} on one shaft", "Take out what is not there.");
        }

        var levers = Objects(shaft.At("levers"), items.Take(LinkageForm.MostLevers), LinkageForm.Lever)
            .Select(r => new LeverPart(
                r.Text("name", "lever") ?? "lever",
                r.Needed("length", NumberLimit.LeverLength),
                r.Needed("angle", NumberLimit.Angle),
                r.Number("along", NumberLimit.Along) ?? 0,
                r.Flag("clamped")))
            .ToList();
        if (levers.Select(l => l.Name).Distinct(StringComparer.Ordinal).Count() < levers.Count)
        {
            shaft.Faults.Add(shaft.At("levers"), "Two levers of one name on one shaft", "each lever of a shaft a name of its own", "Name them by what they carry.");
        }

        return levers;
    }

    private static ThrottlePart Throttle(ObjectReader reader)
    {
        if (reader["opens"] is null)
        {
            reader.Faults.Missing(reader.At("opens"), "Which way the spindle opens", "\"clockwise\" or \"anticlockwise\", seen looking along its axis", "\"opens\": \"clockwise\"");
        }

        var (seated, idle, full) = (reader.Needed("seated", NumberLimit.Seated), reader.Needed("idle", NumberLimit.Plate), reader.Needed("full", NumberLimit.Plate));
        if (idle <= seated)
        {
            reader.Faults.Add(reader.At("idle"), $"On its stop the plate stands at {idle}°, shut it stands at {seated}°", "a stop that holds the plate a little open", "Measure both from square to the bore; one or two degrees apart is usual.");
        }

        if (full <= idle)
        {
            reader.Faults.Add(reader.At("full"), $"Fully open is {full}°, on the stop it is {idle}°", "more than on the stop", "Measure both from square to the bore.");
        }

        var spring = reader.Object("spring", LinkageForm.Spring);
        return new ThrottlePart
        {
            Opens = reader.Word("opens", Senses, TurningSense.Clockwise),
            BoreMillimetres = reader.Needed("bore", NumberLimit.Bore),
            SeatedDegrees = seated,
            IdleDegrees = idle,
            FullDegrees = full,
            PlatesAlongMillimetres = reader.Numbers("plates", (1, 4), NumberLimit.Along) ?? [0],
            Spring = spring is null ? null : new SpringPart(
                spring.Needed("torque", NumberLimit.Torque), spring.Number("rate", NumberLimit.Rate) ?? 0, spring.Number("along", NumberLimit.Along) ?? 0),
        };
    }
}
