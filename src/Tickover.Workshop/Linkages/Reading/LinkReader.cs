using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Reads rods and couplings.</summary>
internal sealed class LinkReader(ObjectReader root, IReadOnlyList<ShaftPart> shafts)
{
    /// <summary>Rods and couplings in the order of the document, each with the path it stands at.</summary>
    public List<(string Path, LinkPart Link)> Read()
    {
        if (root["rods"] is null && root["couplings"] is null)
        {
            root.Faults.Missing("rods", "What joins the shafts", "a list of rods, of couplings, or both", "\"rods\": [{ \"name\": \"pedal rod\", \"from\": \"pedal shaft/lever\", \"to\": \"front/lever\" }]");
        }

        return
        [
            .. Items("rods", LinkageForm.Rod).Select(r => (r.Path, Link: (LinkPart?)Rod(r))).Where(l => l.Link is not null).Select(l => (l.Path, l.Link!)),
            .. Items("couplings", LinkageForm.Coupling).Select(c => (c.Path, Link: (LinkPart?)Coupling(c))).Where(l => l.Link is not null).Select(l => (l.Path, l.Link!)),
        ];
    }

    /// <summary>The name, which must be there.</summary>
    public static string? Named(ObjectReader reader)
    {
        if (reader["name"] is null)
        {
            reader.Faults.Missing(reader.At("name"), "The name", "what it is called on this car", "\"name\": \"left front\"");
        }

        return reader.Text("name", "left front");
    }

    private IEnumerable<ObjectReader> Items(string list, IReadOnlyList<string> known)
    {
        foreach (var (item, i) in (root.List(list, "[{ … }]") ?? []).Take(LinkageForm.MostShafts).Select((item, i) => (item, i)))
        {
            if (item.Kind == SourceKind.Object)
            {
                yield return new ObjectReader(item, $"{list}[{i}]", known, root.Faults);
            }
            else
            {
                root.Faults.WrongKind($"{list}[{i}]", item, "an object in braces", "{ \"name\": \"…\", \"from\": \"…\", \"to\": \"…\" }");
            }
        }
    }

    private RodPart? Rod(ObjectReader reader)
    {
        var (name, from, to) = (Named(reader), End(reader, "from"), End(reader, "to"));
        var length = reader.Number("length", NumberLimit.Length);
        var play = reader.Number("play", NumberLimit.Play) ?? LinkageForm.UsualPlay;
        var thread = Thread(reader);
        if (name is null || from is null || to is null)
        {
            return null;
        }

        if (from.Value.Shaft == to.Value.Shaft)
        {
            reader.Faults.Add(reader.At("to"), "Both ends of the rod are on one shaft", "levers of two shafts", "Name the lever of the shaft that the rod turns.");
            return null;
        }

        return new RodPart(name, from.Value.Shaft, to.Value.Shaft)
        {
            FromLever = from.Value.Lever,
            ToLever = to.Value.Lever,
            LengthMillimetres = length ?? double.NaN,
            IsFitted = reader["length"] is null,
            Thread = thread,
            PlayMillimetres = play,
        };
    }

    private static RodThread? Thread(ObjectReader rod)
    {
        if (rod.Object("thread", LinkageForm.Thread) is not { } reader)
        {
            return null;
        }

        var turnbuckle = reader.Flag("turnbuckle");
        return new RodThread(
            reader.Needed("pitch", NumberLimit.Pitch), turnbuckle, reader.Number("step", NumberLimit.Step) ?? (turnbuckle ? LinkageForm.EighthTurn : LinkageForm.HalfTurn));
    }

    private CouplingPart? Coupling(ObjectReader reader)
    {
        var (name, from, to) = (Named(reader), Spindle(reader, "from"), Spindle(reader, "to"));
        var at = reader.Numbers("at", (2, 2), NumberLimit.Along) ?? [0, 0];
        var ahead = reader.Number("ahead", NumberLimit.Ahead) ?? 0;
        var screw = reader.Object("screw", LinkageForm.Screw) is { } s ? new CouplingScrew(s.Needed("pitch", NumberLimit.Pitch), s.Needed("arm", NumberLimit.Arm)) : null;
        return name is null || from is null || to is null ? null : new CouplingPart(name, from.Value, to.Value)
        {
            AheadDegrees = ahead,
            FromAlongMillimetres = at[0],
            ToAlongMillimetres = at[1],
            Screw = screw,
        };
    }

    private (int Shaft, int Lever)? End(ObjectReader reader, string member)
    {
        var known = shafts.SelectMany(s => s.Levers.Select(l => $"{s.Name}/{l.Name}")).ToArray();
        if (Reference(reader, member, known, "shaft and lever") is not { } text)
        {
            return null;
        }

        var shaft = shafts.Select((s, i) => (s, i)).First(s => s.s.Levers.Any(l => string.Equals($"{s.s.Name}/{l.Name}", text, StringComparison.Ordinal)));
        return (shaft.i, shaft.s.Levers.Select((l, i) => (l, i)).First(l => string.Equals($"{shaft.s.Name}/{l.l.Name}", text, StringComparison.Ordinal)).i);
    }

    private int? Spindle(ObjectReader reader, string member) =>
        Reference(reader, member, [.. shafts.Select(s => s.Name)], "shaft") is { } text
            ? shafts.Select((s, i) => (s, i)).First(s => string.Equals(s.s.Name, text, StringComparison.Ordinal)).i
            : null;

    private static string? Reference(ObjectReader reader, string member, string[] known, string what)
    {
        var example = known.FirstOrDefault() ?? (what is "shaft" ? "front" : "front/lever");
        if (reader[member] is null)
        {
            reader.Faults.Missing(reader.At(member), $"The {what} it goes {member}", $"the name of a {what} described above", $"\"{member}\": \"{example}\"");
            return null;
        }

        var text = reader.Text(member, example);
        if (text is null || known.Contains(text, StringComparer.Ordinal))
        {
            return text;
        }

        var near = Spelling.Nearest(text, known);
        reader.Faults.Add(reader.At(member), $"There is no {what} \"{text}\"", known.Length == 0 ? $"a {what} described above" : string.Join(", ", known.Take(12).Select(k => $"\"{k}\"")), near is null ? $"Name one of them, or describe the {what}." : $"Did you mean \"{near}\"?");
        return null;
    }
}
