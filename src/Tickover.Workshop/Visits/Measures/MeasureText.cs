using System.Globalization;
using System.Text.RegularExpressions;
using Tickover.Workshop.Visits.Measures.Units;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Reads what a person types for a measure, and says in plain words what is wrong with it.</summary>
/// <remarks>
/// A decimal comma and a decimal point count alike; thousands are not grouped. What is typed without a unit is taken in the unit of the field.
/// Never throws for what somebody typed, and never gives a value that is not finite.
/// </remarks>
public static partial class MeasureText
{
    /// <summary>The longest figure read.</summary>
    public const int LongestNumber = 40;

    /// <summary>The longest words read.</summary>
    public const int LongestWords = 200;

    private const double LargestNumber = 1e9;

    /// <summary>Reads a text.</summary>
    /// <param name="measure">What is measured.</param>
    /// <param name="text">The text as typed.</param>
    /// <param name="units">The units of the field.</param>
    /// <returns>The value and the text to keep, or what is wrong.</returns>
    public static TypedReading Read(MeasureDefinition measure, string? text, UnitChoice units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (string.IsNullOrWhiteSpace(text))
        {
            return TypedReading.Refused($"{measure.Label}: nothing is written. Write the reading, or choose \"No reading\" and say why.");
        }

        return measure.Quantity switch
        {
            Quantity.Words => Words(measure, text),
            Quantity.Choice => Choice(measure, text),
            _ => Figure(measure, text, units),
        };
    }

    private static TypedReading Words(MeasureDefinition measure, string text)
    {
        var plain = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (plain.Length > LongestWords)
        {
            return TypedReading.Refused($"{measure.Label}: {plain.Length} letters are too many. Keep to {LongestWords}, the rest belongs in the note.");
        }

        return plain.Any(char.IsControl) ? TypedReading.Refused($"{measure.Label}: a sign in it cannot be shown. Type it anew.") : new TypedReading { Typed = plain };
    }

    private static TypedReading Choice(MeasureDefinition measure, string text)
    {
        var chosen = measure.Choices.FirstOrDefault(c => c.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase));
        return chosen is null
            ? TypedReading.Refused($"{measure.Label}: \"{Shortened(text)}\" is none of the words. Choose {List(measure.Choices)}.")
            : new TypedReading { Typed = chosen };
    }

    private static TypedReading Figure(MeasureDefinition measure, string text, UnitChoice units)
    {
        var plain = TypedNumber.Plain(text);
        if (plain.Length > LongestNumber)
        {
            return TypedReading.Refused($"{measure.Label}: \"{Shortened(plain)}\" is too long for a figure. Write one figure, such as {Example(measure, units)}.");
        }

        if (measure.Quantity == Quantity.GaugeScale && GaugeScale.Read(plain) is { } needle)
        {
            return new TypedReading { Typed = GaugeScale.Show(needle), Si = needle };
        }

        if (Odd(measure, plain, units) is { } problem)
        {
            return TypedReading.Refused(problem);
        }

        return TypedNumber.Read(plain) is { } number && Math.Abs(number.Value) <= LargestNumber
            ? Converted(measure, number, units)
            : TypedReading.Refused($"{measure.Label}: \"{Shortened(plain)}\" is no figure. Write it as {Example(measure, units)}.");
    }

    private static string? Odd(MeasureDefinition measure, string plain, UnitChoice units)
    {
        if (plain.Contains('±', StringComparison.Ordinal))
        {
            return $"{measure.Label}: \"{Shortened(plain)}\" holds two figures. Write the reading alone; what it is good to comes from the instrument.";
        }

        if (Range().IsMatch(plain))
        {
            return $"{measure.Label}: \"{Shortened(plain)}\" is a range. Write one figure, such as {Example(measure, units)}, and the rest in the note.";
        }

        // Three digits behind a comma, where the instrument gives whole numbers: 1,500 may mean 1500 or 1.5, and is not guessed at.
        return measure.Decimals <= 0 && Grouped().Match(plain) is { Success: true } grouped
            ? $"{measure.Label}: \"{Shortened(plain)}\" can be read two ways. Write {grouped.Groups["a"].Value}{grouped.Groups["b"].Value} if that is what is meant; thousands are not parted."
            : null;
    }

    private static TypedReading Converted(MeasureDefinition measure, TypedNumber number, UnitChoice units)
    {
        var unit = number.Unit.Length == 0 ? QuantityUnits.Find(measure.Quantity, measure.Unit(units)) : QuantityUnits.Written(measure.Quantity, number.Unit);
        if (unit is null)
        {
            return TypedReading.Refused($"{measure.Label}: \"{Shortened(number.Unit)}\" is no unit of it. Write {Offered(measure)}.");
        }

        if (measure.Quantity == Quantity.Count && number.Value != Math.Floor(number.Value))
        {
            return TypedReading.Refused($"{measure.Label}: {number.Text} is not a whole number. Count again, and write 3 or 4.");
        }

        var si = unit.ToSi(number.Value);
        var typed = unit.Symbol is "" ? number.Text : unit.Symbol is "°" ? number.Text + unit.Symbol : $"{number.Text} {unit.Symbol}";
        return double.IsFinite(si)
            ? new TypedReading { Typed = typed, Si = si, Question = Question(measure, typed, si, units) }
            : TypedReading.Refused($"{measure.Label}: \"{typed}\" is no size of anything on a car.");
    }

    private static string Question(MeasureDefinition measure, string typed, double si, UnitChoice units) =>
        measure.Usual is null || measure.Usual.Holds(si) ? "" : $"{typed}? {measure.Label}: {Lower(ShownMeasure.Usual(measure, units))}. Keep it or mend it.";

    private static string Example(MeasureDefinition measure, UnitChoice units)
    {
        var middle = measure.Usual is { } usual ? (usual.LowSi + usual.HighSi) / 2 : 0;
        return ShownMeasure.Text(measure, middle, units).Replace('\u2009', ' ');
    }

    private static string Offered(MeasureDefinition measure) => measure.Quantity switch
    {
        Quantity.JetNumber => "the number on the jet, or its bore with mm or in",
        Quantity.GaugeScale => "E, 1/4, half, F or a number with %",
        Quantity.Lambda or Quantity.Count => "the number alone",
        _ => List([.. QuantityUnits.Of(measure.Quantity).Select(u => u.Symbol)]),
    };

    private static string List(IReadOnlyList<string> words) => words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";

    private static string Lower(string text) => text.Length == 0 ? text : text[..1].ToLower(CultureInfo.InvariantCulture) + text[1..];

    private static string Shortened(string text)
    {
        const int Longest = 30;
        return text.Length <= Longest ? text : string.Concat(text.AsSpan(0, char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest), "…");
    }

    [GeneratedRegex(@"[0-9] ?(-|–|—|…|\.\.+|to|/ ?[0-9]+ ?-) ?[0-9]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Range();

    [GeneratedRegex("^[+-]?(?<a>[1-9][0-9]{0,2})[.,](?<b>[0-9]{3})($|[^0-9])", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Grouped();
}
