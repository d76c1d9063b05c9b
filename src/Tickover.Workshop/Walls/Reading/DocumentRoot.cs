using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Opens a JSON document of a kind.</summary>
internal static class DocumentRoot
{
    /// <summary>Opens it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="kind">Its kind in a word, as in the guide's name.</param>
    /// <param name="format">What its format has to say.</param>
    /// <param name="known">Names known in it.</param>
    /// <returns>The reader, or what is wrong with all of it.</returns>
    public static (ObjectReader? Reader, IReadOnlyList<Fault> Faults) Open(string json, string kind, string format, IReadOnlyList<string> known)
    {
        var root = SourceParser.Parse(json, out var syntax, kind);
        if (root is null)
        {
            return (null, [syntax!]);
        }

        var faults = new Faults(kind);
        var example = $"\"format\": \"{format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + example + ", … }");
            return (null, faults.All);
        }

        if (root["format"] is { } said && !(said.Kind == SourceKind.Text && string.Equals(said.Text, format, StringComparison.Ordinal)))
        {
            // A document of another kind would only be called wrong in every line.
            faults.WrongKind("format", said, $"\"{format}\", the one format this version reads here", example);
            return (null, faults.All);
        }

        if (root["format"] is null)
        {
            faults.Missing("format", $"The marker of a {kind} document", $"\"{format}\"", example);
        }

        return (new ObjectReader(root, string.Empty, known, faults), faults.All);
    }
}
