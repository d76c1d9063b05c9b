using System.Globalization;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Reads the words and numbers that causes, symptoms and tests have in common.</summary>
internal static class FaultFields
{
    public static IEnumerable<ObjectReader> Items(ObjectReader parent, string list, IReadOnlyList<string> known)
    {
        foreach (var (item, i) in (parent.List(list, "[{ … }]") ?? []).Select((item, i) => (item, i)))
        {
            if (item.Kind == SourceKind.Object)
            {
                yield return new ObjectReader(item, $"{parent.At(list)}[{i}]", known, parent.Faults);
            }
            else
            {
                parent.Faults.WrongKind($"{parent.At(list)}[{i}]", item, "an object in braces", "{ \"key\": \"…\" }");
            }
        }
    }

    public static string Needed(ObjectReader reader, string member)
    {
        if (reader[member] is null)
        {
            reader.Faults.Missing(reader.At(member), $"The member {member}", "a text", $"\"{member}\": \"…\"");
        }

        // Questions are longer than the words of a car document may be.
        if (reader[member] is { } node && (node.Kind != SourceKind.Text || node.Text.Trim().Length is 0 or > FaultForm.LongestWords))
        {
            reader.Faults.WrongKind(reader.At(member), node, $"a text of 1 to {FaultForm.LongestWords} letters", $"\"{member}\": \"…\"");
        }

        return reader[member] is { Kind: SourceKind.Text } text ? text.Text.Trim() : string.Empty;
    }

    public static string Trust(ObjectReader reader)
    {
        var text = Needed(reader, "confidence");
        if (text.Length > 0 && text is not ("low" or "middling" or "high"))
        {
            reader.Faults.Add(reader.At("confidence"), $"\"{text}\" is no confidence", "low, middling or high", "Write one of these words.");
        }

        return text;
    }

    public static IReadOnlyList<string> Keys(ObjectReader reader, string member) =>
        [.. (reader.List(member, "[\"…\"]") ?? []).Where(n => n.Kind == SourceKind.Text).Select(n => n.Text.Trim())];

    public static double Number(ObjectReader reader, string member, double least, double most, double usual) =>
        reader[member] is { } node ? Number(reader.Faults, reader.At(member), node, (least, most)) ?? usual : usual;

    public static IReadOnlyDictionary<string, double> Chances(ObjectReader reader, string member)
    {
        var chances = new Dictionary<string, double>(StringComparer.Ordinal);
        if (reader[member] is not { Kind: SourceKind.Object } node)
        {
            reader.Faults.Missing(reader.At(member), $"The member {member}", "keys of causes with a chance from 0 to 1", $"\"{member}\": {{ \"vent-blocked\": 0.8 }}");
            return chances;
        }

        foreach (var (name, value) in node.Members.Select(m => (m.Name, m.Value)))
        {
            chances[name] = Number(reader.Faults, $"{reader.At(member)}.{name}", value, (0, 1)) ?? 0;
        }

        return chances;
    }

    public static T Word<T>(ObjectReader reader, string member)
        where T : struct, Enum
    {
        var text = Needed(reader, member);
        var plain = text.Replace("-", string.Empty, StringComparison.Ordinal);
        if (Enum.TryParse<T>(plain, ignoreCase: true, out var value) && Enum.IsDefined(value) && !char.IsDigit(plain[0]))
        {
            return value;
        }

        if (text.Length > 0)
        {
            reader.Faults.Add(reader.At(member), $"\"{text}\" is no {member}", string.Join(", ", Enum.GetNames<T>()), "Write one of these words.");
        }

        return default;
    }

    private static double? Number(Faults faults, string path, SourceNode node, (double Least, double Most) limits)
    {
        if (node.Kind == SourceKind.Number && double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= limits.Least && value <= limits.Most)
        {
            return value;
        }

        faults.Add(path, $"{node.Described} cannot stand here", string.Create(CultureInfo.InvariantCulture, $"a number from {limits.Least} to {limits.Most}, without quotes"), "Mend the number.");
        return null;
    }
}
