using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Tickover.Workshop.Visits.Measures.Units;

/// <summary>A number as a person types it: "3,5", "2½", "1 1/4 in"; and what stands behind it.</summary>
/// <param name="Value">The number, finite.</param>
/// <param name="Text">The number in one spelling: a point, a plain fraction.</param>
/// <param name="Unit">What stands behind it, trimmed; empty where nothing does.</param>
internal sealed partial record TypedNumber(double Value, string Text, string Unit)
{
    private static readonly Dictionary<char, string> Fractions = new()
    {
        ['½'] = "1/2",
        ['¼'] = "1/4",
        ['¾'] = "3/4",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
        ['⅓'] = "1/3",
        ['⅔'] = "2/3",
    };

    /// <summary>One spelling for spaces, minus signs and fractions.</summary>
    /// <param name="text">As typed.</param>
    /// <returns>The text with plain spaces, hyphens and fractions.</returns>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length + 8);
        foreach (var c in text)
        {
            plain.Append(Fractions.TryGetValue(c, out var fraction) ? $" {fraction} " : c is '\u2212' ? "-" : c is '\u2044' ? "/" : char.IsWhiteSpace(c) ? " " : c.ToString());
        }

        return Spaces().Replace(plain.ToString(), " ").Trim();
    }

    /// <summary>Reads a number.</summary>
    /// <param name="plain">A text as <see cref="Plain"/> gives it.</param>
    /// <returns>The number, or null where it is none.</returns>
    public static TypedNumber? Read(string plain) => Fraction(plain) ?? Decimal(plain);

    private static TypedNumber? Decimal(string plain)
    {
        var match = DecimalForm().Match(plain);
        if (!match.Success)
        {
            return null;
        }

        var text = match.Groups["number"].Value.Replace(',', '.').TrimStart('+');
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? new TypedNumber(value, text, match.Groups["unit"].Value)
            : null;
    }

    private static TypedNumber? Fraction(string plain)
    {
        var match = FractionForm().Match(plain);
        if (!match.Success || Whole(match.Groups["below"]) == 0)
        {
            return null;
        }

        var size = Whole(match.Groups["whole"]) + (Whole(match.Groups["above"]) / Whole(match.Groups["below"]));
        var text = $"{match.Groups["sign"].Value.TrimStart('+')}{(match.Groups["whole"].Length > 0 ? match.Groups["whole"].Value + " " : "")}{match.Groups["above"].Value}/{match.Groups["below"].Value}";
        return new TypedNumber(match.Groups["sign"].Value is "-" ? -size : size, text, match.Groups["unit"].Value);
    }

    private static double Whole(Group group) => group.Length == 0 ? 0 : double.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(" +", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^(?<number>[+-]?([0-9]{1,12}([.,][0-9]{0,12})?|[.,][0-9]{1,12})) ?(?<unit>[^0-9.,+/ -][^+]*)?$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex DecimalForm();

    [GeneratedRegex(@"^(?<sign>[+-]?)((?<whole>[0-9]{1,6}) )?(?<above>[0-9]{1,4}) ?/ ?(?<below>[0-9]{1,4}) ?(?<unit>[^0-9.,+/ -][^+]*)?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FractionForm();
}
