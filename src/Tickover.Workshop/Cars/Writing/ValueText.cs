using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Cars.Writing;

/// <summary>Turns what somebody typed into the JSON of a member.</summary>
internal static partial class ValueText
{
    private static readonly JsonSerializerOptions AsWritten = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly char[] BetweenTexts = [';', '\n'];

    private static readonly char[] BetweenNumbers = [' ', ',', ';', '-', '–'];

    /// <summary>The JSON of a text typed for a member.</summary>
    /// <param name="name">The member's name.</param>
    /// <param name="text">What was typed, not blank.</param>
    /// <returns>JSON.</returns>
    public static string ToJson(string name, string text) => name switch
    {
        "emulsionHoles" or "progressionHoles" or "firingAngles" => List(text, BetweenTexts, Quoted),
        "feeds" or "firingOrder" => List(text, BetweenNumbers, NumberOrQuoted),
        "banks" => IsList(text) ? text : Quoted(text),
        "cylinders" => NumberOrQuoted(text),
        _ => IsBare(name) ? NumberOrQuoted(text) : Quoted(text),
    };

    private static string List(string text, char[] between, Func<string, string> item) =>
        IsList(text)
            ? text
            : "[" + string.Join(", ", text.Split(between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(item)) + "]";

    private static bool IsList(string text) => text.StartsWith('[') && SourceParser.Parse(text, out _) is { Kind: SourceKind.List };

    // A number may stand bare where the member needs no unit, as the samples write it.
    private static bool IsBare(string name) =>
        FigureCatalogue.Engine.Concat(FigureCatalogue.Barrel).FirstOrDefault(e => string.Equals(e.Name, name, StringComparison.Ordinal)) is { } entry
        && entry.Definition.Measure is Measure.JetBore or Measure.Ratio or Measure.Turns or Measure.Count;

    private static string NumberOrQuoted(string text) => JsonNumber().IsMatch(text) ? text : Quoted(text);

    private static string Quoted(string text) => JsonSerializer.Serialize(text, AsWritten);

    [GeneratedRegex(@"^-?(0|[1-9][0-9]{0,15})(\.[0-9]{1,15})?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex JsonNumber();
}
