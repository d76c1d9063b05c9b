using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Reads a document into a linkage, or into everything that is wrong with it.</summary>
internal static class LinkageReader
{
    private const string Kind = "linkage";

    public static LinkageReading Read(string json)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new LinkageReading(null, [syntax!], []);
        }

        var faults = new Faults(Kind);
        var example = $"\"format\": \"{LinkageForm.Format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + example + ", … }");
            return new LinkageReading(null, faults.All, []);
        }

        if (root["format"] is not { Kind: SourceKind.Text, Text: LinkageForm.Format } && root["format"] is { } other)
        {
            // A document of another kind would only be called wrong in every line.
            faults.WrongKind("format", other, $"\"{LinkageForm.Format}\", the one format this version reads", example);
            return new LinkageReading(null, faults.All, []);
        }

        var linkage = Linkage(json, new ObjectReader(root, string.Empty, LinkageForm.Root, faults));
        return new LinkageReading(faults.All.Count > 0 ? null : linkage, InOrder(root, faults.All), faults.Warnings);
    }

    private static Fault[] InOrder(SourceNode root, IReadOnlyList<Fault> faults) =>
        [.. faults.OrderBy(f => DocumentPath.Parse(f.Path)?.NearestIn(root).Start ?? 0)];

    private static Linkage? Linkage(string json, ObjectReader root)
    {
        if (root["format"] is null)
        {
            root.Faults.Missing("format", "The marker of a linkage document", $"\"{LinkageForm.Format}\"", $"\"format\": \"{LinkageForm.Format}\"");
        }

        var name = LinkReader.Named(root);
        var shafts = new ShaftReader(root).Read();
        var links = new LinkReader(root, shafts).Read();
        var pedal = Pedal(root, shafts);
        var warmth = Warmth(root);
        if (root.Faults.All.Count > 0 || pedal is null)
        {
            return null;
        }

        var (ordered, joined) = LinkOrder.FromPedal(pedal.Value.Shaft, shafts, links, root.Faults);
        return root.Faults.All.Count > 0 ? null : LinkFit.Settled(
            new Linkage
            {
                Name = name!,
                Document = json,
                PedalTurns = pedal.Value.Turns,
                PedalTravelDegrees = pedal.Value.Travel,
                Shafts = ordered,
                Links = [.. joined.Select(l => l.Link)],
                Warmth = warmth,
            },
            [.. joined.Select(l => l.Path)],
            root.Faults);
    }

    private static (int Shaft, double Travel, TurningSense Turns)? Pedal(ObjectReader root, IReadOnlyList<ShaftPart> shafts)
    {
        if (root["pedal"] is null)
        {
            root.Faults.Missing("pedal", "What the pedal turns", "a shaft, its travel and which way it turns", "\"pedal\": { \"shaft\": \"cross-shaft\", \"travel\": 60, \"turns\": \"clockwise\" }");
        }

        if (root.Object("pedal", LinkageForm.Pedal) is not { } reader)
        {
            return null;
        }

        var travel = reader.Needed("travel", NumberLimit.Travel);
        var turns = reader.Word("turns", ShaftReader.Senses, TurningSense.Clockwise);
        var name = reader.Text("shaft", "cross-shaft");
        var index = shafts.Select((s, i) => (s, i)).Where(s => string.Equals(s.s.Name, name, StringComparison.Ordinal)).Select(s => (int?)s.i).FirstOrDefault();
        if (index is null)
        {
            var near = Spelling.Nearest(name ?? "", shafts.Select(s => s.Name));
            root.Faults.Add(reader.At("shaft"), $"There is no shaft \"{name}\"", string.Join(", ", shafts.Select(s => $"\"{s.Name}\"")), near is null ? "Name the shaft the pedal turns." : $"Did you mean \"{near}\"?");
            return null;
        }

        return (index.Value, travel, turns);
    }

    private static WarmthPart? Warmth(ObjectReader root) =>
        root.Object("warmth", LinkageForm.Warmth) is not { } reader
            ? null
            : new WarmthPart(
                reader.Needed("rise", NumberLimit.Rise),
                reader.Number("rods", NumberLimit.Rise) ?? 0,
                reader["stays"] is null ? default : reader.Place("stays") ?? default);
}
