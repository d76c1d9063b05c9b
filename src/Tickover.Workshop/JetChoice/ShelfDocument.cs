using System.Globalization;
using System.Text.Json;

namespace Tickover.Workshop.JetChoice;

/// <summary>Reads a shelf: JSON such as <c>{"format":"tickover-shelf-1","mainJet":{"135":6}}</c>. docs/jet-choice.md.</summary>
public static class ShelfDocument
{
    private const string Format = "tickover-shelf-1";
    private const int MostOfOne = 10_000;
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The shelf, or what is wrong and where.</returns>
    public static (JetShelf? Shelf, IReadOnlyList<string> Faults) Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            using var document = JsonDocument.Parse(json, Lenient);
            return Read(document.RootElement);
        }
        catch (JsonException fault)
        {
            return (null, [string.Create(CultureInfo.InvariantCulture, $"Line {(fault.LineNumber ?? 0) + 1}: this is no JSON. Check commas, quotes and brackets there.")]);
        }
    }

    private static (JetShelf?, IReadOnlyList<string>) Read(JsonElement root)
    {
        if (root.ValueKind is not JsonValueKind.Object || !root.TryGetProperty("format", out var format) || format.ValueKind is not JsonValueKind.String || !string.Equals(format.GetString(), Format, StringComparison.Ordinal))
        {
            return (null, [$"format: a shelf begins with \"format\": \"{Format}\"."]);
        }

        var faults = new List<string>();
        var stock = new List<KeyValuePair<(string, double), int>>();
        var tubes = new List<EmulsionTubeChoice>();
        foreach (var member in root.EnumerateObject().Where(m => m.Name is not "format"))
        {
            if (member.Name is "emulsionTubes")
            {
                Tubes(member.Value, tubes, faults);
            }
            else if (JetParts.Find(member.Name) is { IsSetting: false } part && member.Value.ValueKind is JsonValueKind.Object)
            {
                Sizes(part, member.Value, stock, faults);
            }
            else
            {
                faults.Add($"{member.Name}: a shelf holds {string.Join(", ", JetParts.All.Where(p => !p.IsSetting).Select(p => p.Name))} and emulsionTubes, each with sizes and counts.");
            }
        }

        return faults.Count == 0 ? (new JetShelf(stock, tubes), faults) : (null, faults);
    }

    private static void Sizes(JetPart part, JsonElement sizes, List<KeyValuePair<(string, double), int>> stock, List<string> faults)
    {
        foreach (var entry in sizes.EnumerateObject())
        {
            var text = part.Suffix.Length > 0 && entry.Name.EndsWith(part.Suffix, StringComparison.Ordinal) ? entry.Name[..^part.Suffix.Length] : entry.Name;
            if (!double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size) || size <= 0)
            {
                faults.Add($"{part.Name}.{entry.Name}: a size such as \"{part.Text(part.Series.Smallest)}\".");
            }
            else if (!Number(entry.Value, out var count))
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"{part.Name}.{entry.Name}: how many there are, a whole number from 0 to {MostOfOne}."));
            }
            else
            {
                stock.Add(new((part.Name, size), count));
            }
        }
    }

    private static void Tubes(JsonElement tubes, List<EmulsionTubeChoice> found, List<string> faults)
    {
        const string Form = "emulsionTubes: by code, such as {\"B3\": {\"count\": 6, \"holes\": [\"2 x 1 mm at 4 mm\"]}}.";
        if (tubes.ValueKind is not JsonValueKind.Object)
        {
            faults.Add(Form);
            return;
        }

        foreach (var tube in tubes.EnumerateObject())
        {
            if (tube.Value.ValueKind is JsonValueKind.Object && tube.Value.TryGetProperty("count", out var counted) && Number(counted, out var count)
                && tube.Value.TryGetProperty("holes", out var holes) && holes.ValueKind is JsonValueKind.Array
                && holes.EnumerateArray().All(h => h.ValueKind is JsonValueKind.String && Cars.Text.HoleText.Row(h.GetString()!) is not null))
            {
                found.Add(new EmulsionTubeChoice(tube.Name, [.. holes.EnumerateArray().Select(h => h.GetString()!)], count));
            }
            else
            {
                faults.Add($"emulsionTubes.{tube.Name}: a count and holes such as \"2 x 1 mm at 4 mm\".");
            }
        }
    }

    private static bool Number(JsonElement value, out int count)
    {
        count = 0;
        return value.ValueKind is JsonValueKind.Number && value.TryGetInt32(out count) && count is >= 0 and <= MostOfOne;
    }
}
