using System.Globalization;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Reads numbers, places and words of a linkage document.</summary>
internal static class LinkageNumbers
{
    private static readonly Dictionary<string, Place> Directions = new(StringComparer.Ordinal)
    {
        ["ahead"] = new(1, 0, 0),
        ["back"] = new(-1, 0, 0),
        ["left"] = new(0, 1, 0),
        ["right"] = new(0, -1, 0),
        ["up"] = new(0, 0, 1),
        ["down"] = new(0, 0, -1),
    };

    /// <summary>A number that must be there.</summary>
    public static double Needed(this ObjectReader reader, string name, NumberLimit limit)
    {
        if (reader[name] is null)
        {
            reader.Faults.Missing(reader.At(name), limit.What, Range(limit), $"\"{name}\": {Example(limit)}");
        }

        return reader.Number(name, limit) ?? double.NaN;
    }

    /// <summary>A number that may be there; null where it is absent or faulty.</summary>
    public static double? Number(this ObjectReader reader, string name, NumberLimit limit) =>
        reader[name] is { } node ? Number(node, reader.At(name), limit, reader.Faults) : null;

    /// <summary>A list of numbers; null where it is absent or faulty.</summary>
    public static IReadOnlyList<double>? Numbers(this ObjectReader reader, string name, (int Least, int Most) count, NumberLimit limit)
    {
        var example = $"[{string.Join(", ", Enumerable.Repeat(Example(limit), count.Least))}]";
        if (reader.List(name, example) is not { } items)
        {
            return null;
        }

        if (items.Count < count.Least || items.Count > count.Most)
        {
            var wanted = count.Least == count.Most ? $"{count.Least} numbers" : $"{count.Least} to {count.Most} numbers";
            reader.Faults.Add(reader.At(name), $"{items.Count} numbers", wanted, $"Write \"{name}\": {example}.");
            return null;
        }

        var read = items.Select((item, i) => Number(item, $"{reader.At(name)}[{i}]", limit, reader.Faults)).ToArray();
        return Array.TrueForAll(read, r => r is not null) ? [.. read.OfType<double>()] : null;
    }

    /// <summary>A place of three numbers in mm.</summary>
    public static Place? Place(this ObjectReader reader, string name)
    {
        if (reader[name] is null)
        {
            reader.Faults.Missing(reader.At(name), "The place", "mm ahead, to the left and up of the point you measure from", $"\"{name}\": [120, -40, 35]");
        }

        return reader.Numbers(name, (3, 3), NumberLimit.Coordinate) is { } n ? new Place(n[0], n[1], n[2]) : null;
    }

    /// <summary>A direction: a word or three numbers.</summary>
    public static Place? Direction(this ObjectReader reader, string name)
    {
        const string Allowed = "\"ahead\", \"back\", \"left\", \"right\", \"up\", \"down\", or three numbers";
        if (reader[name] is not { } node)
        {
            reader.Faults.Missing(reader.At(name), "The direction the shaft runs", Allowed, $"\"{name}\": \"left\"");
            return null;
        }

        if (node.Kind == SourceKind.List)
        {
            var n = reader.Numbers(name, (3, 3), NumberLimit.Direction);
            if (n is not null && n.All(v => Math.Abs(v) < 1e-9))
            {
                reader.Faults.Add(reader.At(name), "A direction of no length", Allowed, "Write which way the shaft runs, such as [0, 1, 0.1].");
                return null;
            }

            return n is null ? null : new Place(n[0], n[1], n[2]);
        }

        if (node.Kind == SourceKind.Text && Directions.TryGetValue(node.Text.Trim(), out var direction))
        {
            return direction;
        }

        reader.Faults.WrongKind(reader.At(name), node, Allowed, $"\"{name}\": \"left\"");
        return null;
    }

    /// <summary>One of a few words.</summary>
    public static T Word<T>(this ObjectReader reader, string name, IReadOnlyDictionary<string, T> words, T otherwise)
    {
        if (reader[name] is not { } node)
        {
            return otherwise;
        }

        if (node.Kind == SourceKind.Text && words.TryGetValue(node.Text.Trim(), out var value))
        {
            return value;
        }

        reader.Faults.WrongKind(reader.At(name), node, string.Join(" or ", words.Keys.Select(k => $"\"{k}\"")), $"\"{name}\": \"{words.Keys.First()}\"");
        return otherwise;
    }

    /// <summary>True or false.</summary>
    public static bool Flag(this ObjectReader reader, string name)
    {
        if (reader[name] is not { } node)
        {
            return false;
        }

        if (node is { Kind: SourceKind.Literal, Text: "true" or "false" })
        {
            return node.Text is "true";
        }

        reader.Faults.WrongKind(reader.At(name), node, "true or false, without quotes", $"\"{name}\": true");
        return false;
    }

    internal static double? Number(SourceNode node, string path, NumberLimit limit, Faults faults)
    {
        if (node.Kind != SourceKind.Number || !double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            faults.WrongKind(path, node, $"a number without quotes, {Range(limit)}", Example(limit));
            return null;
        }

        if (value >= limit.Least && value <= limit.Most)
        {
            return value;
        }

        faults.Add(path, $"{limit.What} is {node.Described}", Range(limit), "Measure it again; lengths are in mm, angles in degrees.");
        return null;
    }

    private static string Range(NumberLimit limit) =>
        string.Create(CultureInfo.InvariantCulture, $"{limit.Least} to {limit.Most}{(limit.Unit.Length > 0 ? " " : "")}{limit.Unit}");

    private static string Example(NumberLimit limit) =>
        Math.Clamp(Math.Round((limit.Least + Math.Min(limit.Most, 100)) / 2), limit.Least, limit.Most).ToString(CultureInfo.InvariantCulture);
}
