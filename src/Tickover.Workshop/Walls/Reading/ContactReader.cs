using Tickover.Physics.Walls;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Reads pads and metals in contact.</summary>
internal static class ContactReader
{
    private const int Most = 40;
    private static readonly IReadOnlyList<Metal> AnyMetal = Enum.GetValues<Metal>();

    public static IReadOnlyList<WallPad> Pads(ObjectReader root) =>
        [.. Objects(root, "pads", WallForm.Pad, "[{ \"name\": \"front pad\", \"from\": [0, 100], \"to\": [600, 140] }]").Select(Pad).OfType<WallPad>()];

    public static IReadOnlyList<WallContact> Contacts(ObjectReader root) =>
    [
        .. Objects(root, "contacts", WallForm.Contact, "[{ \"where\": \"strap\", \"metal\": \"steel\" }]").Select(reader => new WallContact(
            Text(reader, "where", "What touches the wall", "strap"),
            Metals.Needed(reader, "metal", AnyMetal),
            reader.Number("area", WallForm.Area),
            reader.Number("bare", WallForm.Area))),
    ];

    private static WallPad? Pad(ObjectReader reader)
    {
        var name = Text(reader, "name", "The pad's name", "front pad");
        if (Corner(reader, "from") is not { } from || Corner(reader, "to") is not { } to)
        {
            return null;
        }

        var box = new WallBox(Math.Min(from.Right, to.Right), Math.Min(from.Up, to.Up), Math.Max(from.Right, to.Right), Math.Max(from.Up, to.Up));
        if (box.Area <= 0)
        {
            reader.Faults.Add(reader.Path, $"{name} has no area", "two corners across from each other", "Write \"from\" and \"to\" as opposite corners.");
            return null;
        }

        return new WallPad(name, box);
    }

    private static WallPoint? Corner(ObjectReader reader, string name)
    {
        if (reader[name] is { } node)
        {
            return OutlineReader.Point(node, reader.At(name), reader.Faults);
        }

        reader.Faults.Missing(reader.At(name), "A corner of the pad", "[mm to the right, mm up]", $"\"{name}\": [0, 100]");
        return null;
    }

    private static string Text(ObjectReader reader, string name, string what, string example)
    {
        if (reader[name] is null)
        {
            reader.Faults.Missing(reader.At(name), what, "a few words", $"\"{name}\": \"{example}\"");
        }

        return reader.Text(name, example) ?? string.Empty;
    }

    private static IEnumerable<ObjectReader> Objects(ObjectReader root, string name, IReadOnlyList<string> known, string example)
    {
        var items = root.List(name, example) ?? [];
        if (items.Count > Most)
        {
            root.Faults.Add(name, $"{items.Count} of them", $"at most {Most}", "Leave out those that matter least.");
        }

        foreach (var (item, i) in items.Take(Most).Select((item, i) => (item, i)))
        {
            if (item.Kind == SourceKind.Object)
            {
                yield return new ObjectReader(item, $"{name}[{i}]", known, root.Faults);
            }
            else
            {
                root.Faults.WrongKind($"{name}[{i}]", item, "an object in braces", example);
            }
        }
    }
}
