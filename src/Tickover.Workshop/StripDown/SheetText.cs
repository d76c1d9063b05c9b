using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown;

/// <summary>Reads the text of a sheet of the strip-down.</summary>
internal static class SheetText
{
    private static readonly JsonSerializerOptions Lenient = new(JsonSerializerDefaults.Web)
    {
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>Reads it; never throws for what somebody typed.</summary>
    /// <typeparam name="T">The sheet as it is written.</typeparam>
    /// <param name="json">The text.</param>
    /// <param name="format">What its format must say.</param>
    /// <param name="formatOf">What it says.</param>
    /// <param name="called">What it is, such as "sheet of jets", and the page that tells of it.</param>
    /// <returns>What is written, or why it is none.</returns>
    public static (T? Written, Fault? Fault) Read<T>(string json, string format, Func<T, string?> formatOf, (string Name, string Guide) called)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(json);
        T? written;
        try
        {
            written = JsonSerializer.Deserialize<T>(json, Lenient);
        }
        catch (JsonException fault)
        {
            return (null, new Fault(fault.Path ?? "", Line($"Line {(fault.LineNumber ?? 0) + 1}: this is no {called.Name}"), $"what docs/{called.Guide}-document.md tells", "Check names, commas, quotes and brackets there."));
        }

        return written is null || !string.Equals(formatOf(written), format, StringComparison.Ordinal)
            ? (null, new Fault("format", $"This is no {called.Name}", $"\"{format}\"", $"Begin with \"format\": \"{format}\"."))
            : (written, null);
    }

    /// <summary>Faults of figures outside their ranges; a figure that is not written is left alone.</summary>
    /// <param name="at">Path of the object they stand in, with its point; empty at the top.</param>
    /// <param name="figures">Name, value, lowest, highest, unit.</param>
    /// <returns>The faults.</returns>
    public static IEnumerable<Fault> Figures(string at, params (string Name, double? Value, double Low, double High, string Unit)[] figures) =>
        from figure in figures
        where figure.Value is { } value && !(value >= figure.Low && value <= figure.High)
        select new Fault($"{at}{figure.Name}", Line($"{figure.Value} {figure.Unit}").TrimEnd(), Line($"{figure.Low} to {figure.High} {figure.Unit}").TrimEnd(), "Measure it again, and see that the unit is this one.");

    /// <summary>The fault of a figure that has to be there.</summary>
    /// <param name="at">Its path.</param>
    /// <param name="what">What it is.</param>
    /// <param name="example">How it would be written.</param>
    /// <returns>The fault.</returns>
    public static Fault Missing(string at, string what, string example) => new(at, $"{what} is missing", example, $"Measure it and write it, such as {example}.");

    /// <summary>Reads the car a sheet carries.</summary>
    /// <param name="element">The car document in the sheet; null where it carries none.</param>
    /// <returns>The car, or what is wrong with it.</returns>
    public static (Car? Car, IReadOnlyList<Fault> Faults) CarOf(JsonElement? element)
    {
        if (element is not { ValueKind: not (JsonValueKind.Null or JsonValueKind.Undefined) } written)
        {
            return (null, []);
        }

        var reading = CarDocument.Read(written.GetRawText(), "car");
        return (reading.Car, reading.Faults);
    }

    /// <summary>A text with its numbers as documents write them.</summary>
    /// <param name="text">The text.</param>
    /// <returns>It.</returns>
    public static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
