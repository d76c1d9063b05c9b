using System.Text;
using System.Text.Json;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads JSON into nodes that know where they stand.</summary>
/// <remarks>Strict JSON: no comments, no trailing commas; a note goes into a member "note".</remarks>
internal static class SourceParser
{
    /// <summary>Largest document; a car takes some 2 kB.</summary>
    public const int LargestBytes = 1 << 20;

    /// <summary>Deepest nesting; a car document needs five.</summary>
    public const int DeepestNesting = 16;

    /// <summary>The path of what is wrong with a document as a whole.</summary>
    public const string WholeDocument = "document";

    /// <summary>Reads a text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="fault">What is wrong where null is returned.</param>
    /// <param name="kind">What kind of document it is, in a word, for the messages.</param>
    /// <returns>The document's root, or null.</returns>
    public static SourceNode? Parse(string json, out Fault? fault, string kind = "car")
    {
        fault = null;
        var bytes = json.Length <= LargestBytes ? Encoding.UTF8.GetBytes(json) : null;
        if (bytes is null || bytes.Length > LargestBytes)
        {
            fault = new Fault(WholeDocument, "The document is larger than 1 MiB", $"at most 1 MiB; a {kind} takes some 2 kB", $"Check that this is a {kind} document.");
            return null;
        }

        if (string.IsNullOrWhiteSpace(json))
        {
            fault = new Fault(WholeDocument, "The document is empty", $"a {kind} document in JSON", "Start from one of the samples.");
            return null;
        }

        try
        {
            return Read(bytes);
        }
        catch (JsonException exception)
        {
            fault = SyntaxFault(bytes, exception, kind);
            return null;
        }
    }

    private static SourceNode Read(byte[] bytes)
    {
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = DeepestNesting });
        reader.Read();
        var root = ReadValue(ref reader);

        // Reading on past the root is what finds text that follows it.
        while (reader.Read())
        {
        }

        return root;
    }

    private static SourceNode ReadValue(ref Utf8JsonReader reader)
    {
        var start = (int)reader.TokenStartIndex;
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => ReadObject(ref reader, start),
            JsonTokenType.StartArray => ReadList(ref reader, start),
            JsonTokenType.String => Leaf(SourceKind.Text, start, ref reader, TextOf(ref reader)),
            JsonTokenType.Number => Leaf(SourceKind.Number, start, ref reader, Encoding.UTF8.GetString(reader.ValueSpan)),
            _ => Leaf(SourceKind.Literal, start, ref reader, Encoding.UTF8.GetString(reader.ValueSpan)),
        };
    }

    private static SourceNode Leaf(SourceKind kind, int start, ref Utf8JsonReader reader, string text) =>
        new() { Kind = kind, Start = start, End = (int)reader.BytesConsumed, Text = text };

    private static SourceNode ReadObject(ref Utf8JsonReader reader, int start)
    {
        var members = new List<SourceMember>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = TextOf(ref reader);
            var nameStart = (int)reader.TokenStartIndex;
            reader.Read();
            members.Add(new SourceMember(name, nameStart, ReadValue(ref reader)));
        }

        return new SourceNode { Kind = SourceKind.Object, Start = start, End = (int)reader.BytesConsumed, Members = members };
    }

    private static SourceNode ReadList(ref Utf8JsonReader reader, int start)
    {
        var items = new List<SourceNode>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(ReadValue(ref reader));
        }

        return new SourceNode { Kind = SourceKind.List, Start = start, End = (int)reader.BytesConsumed, Items = items };
    }

    private static string TextOf(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString() ?? string.Empty;
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, written as an escape, is legal JSON and no text.
            return "\uFFFD";
        }
    }

    private static Fault SyntaxFault(byte[] bytes, JsonException exception, string kind)
    {
        var line = (int)(exception.LineNumber ?? 0);
        var lines = Encoding.UTF8.GetString(bytes).Split('\n');
        var atLine = lines[Math.Min(line, lines.Length - 1)];
        var lineBytes = Encoding.UTF8.GetBytes(atLine);
        var column = Encoding.UTF8.GetCharCount(lineBytes, 0, Math.Min((int)(exception.BytePositionInLine ?? 0), lineBytes.Length));
        var place = $"line {line + 1}, column {column + 1}";
        if (exception.Message.Contains("maximum configured depth", StringComparison.OrdinalIgnoreCase))
        {
            return new Fault(place, $"Nested deeper than {DeepestNesting} levels", $"five levels are enough for a {kind}", "Check the braces and brackets before this place.");
        }

        var rest = string.Join('\n', lines.Skip(line + 1).Prepend(atLine[Math.Min(column, atLine.Length)..]));

        // A document cut off behind a comma is reported at that comma.
        return rest.Trim() is "" or ","
            ? new Fault(place, "The document stops before it is complete", "every brace, bracket and quote closed", "Check that the file was saved whole; close what is open.")
            : new Fault(place, $"Not readable as JSON from here: {Near(rest)}", "JSON: names and texts in double quotes, commas between members, no comments and no comma after the last", "Mend this place; then the rest is checked.");
    }

    private static string Near(string rest)
    {
        const int Shown = 20;
        var line = rest.Split('\n')[0].Trim();
        return line.Length == 0 ? "the end of the line" : line.Length <= Shown ? line : line[..Shown] + "…";
    }
}
