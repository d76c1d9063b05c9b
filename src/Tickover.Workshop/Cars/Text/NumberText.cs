using System.Globalization;
using System.Text.RegularExpressions;

namespace Tickover.Workshop.Cars.Text;

/// <summary>Splits "3,5 mm" into a number and what stands behind it.</summary>
internal static partial class NumberText
{
    /// <summary>Longer texts are no quantity; the limit keeps matching cheap.</summary>
    private const int LongestText = 40;

    /// <summary>Splits a text.</summary>
    /// <param name="text">The text; a decimal point and a decimal comma count alike.</param>
    /// <param name="number">The number, finite.</param>
    /// <param name="unit">What stands behind it, trimmed; empty where nothing does.</param>
    /// <returns>Whether the text begins with a finite number.</returns>
    public static bool TrySplit(string text, out double number, out string unit)
    {
        number = 0;
        unit = string.Empty;
        if (text.Length > LongestText)
        {
            return false;
        }

        var plain = text.Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ');
        return TryFraction(plain, out number, out unit) || TryDecimal(plain, out number, out unit);
    }

    private static bool TryDecimal(string text, out double number, out string unit)
    {
        var match = DecimalForm().Match(text);
        unit = match.Groups["unit"].Value;
        number = 0;
        return match.Success
            && double.TryParse(
                match.Groups["number"].Value.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
    }

    private static bool TryFraction(string text, out double number, out string unit)
    {
        var match = FractionForm().Match(text);
        unit = match.Groups["unit"].Value;
        number = 0;
        if (!match.Success)
        {
            return false;
        }

        var below = Whole(match.Groups["below"]);
        number = below == 0 ? double.NaN : Whole(match.Groups["whole"]) + (Whole(match.Groups["above"]) / below);
        return double.IsFinite(number);
    }

    private static double Whole(Group group) =>
        group.Length == 0 ? 0 : double.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?<number>[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+)([eE][+-]?[0-9]{1,3})?)\s*(?<unit>[^\s0-9.,/+-].*?)?\s*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex DecimalForm();

    // Drawings in inches: "1 1/4 in", "5/8 in".
    [GeneratedRegex(@"^\s*((?<whole>[0-9]{1,4})\s+)?(?<above>[0-9]{1,4})/(?<below>[0-9]{1,4})\s*(?<unit>[^\s0-9.,/+-].*?)?\s*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FractionForm();
}
