using System.Globalization;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.Exhaust;

/// <summary>Reads the numbers of a gas reading and gathers what is wrong with them.</summary>
internal sealed class GasText
{
    private const string Missing = " is missing.";

    private static readonly (double Minimum, double Maximum) Tenths = (50, 200); // of a per cent: 5 to 20 % of CO₂

    private readonly List<string> _complaints = [];

    internal IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Half of it is what rounding took from the λ on the display.</summary>
    internal static double Step(string? text)
    {
        var digits = (text ?? "").Trim().SkipWhile(c => c is not ('.' or ',')).Skip(1).TakeWhile(char.IsAsciiDigit).Count();
        return Math.Pow(10, -digits);
    }

    internal double Needed(GasQuantity quantity, string? text)
    {
        if (IsBlank(text))
        {
            var first = !_complaints.Exists(said => said.Contains(Missing, StringComparison.Ordinal));
            _complaints.Add(quantity.Name + Missing + (first ? " All four gases are needed: CO, HC, CO₂ and O₂." : ""));
            return 0;
        }

        return Number(quantity, text!) is { } number ? Within(quantity, number) : 0;
    }

    internal double? Optional(GasQuantity quantity, string? text)
    {
        var number = IsBlank(text) ? null : Number(quantity, text!);
        return number is { } given ? Within(quantity, given) : null;
    }

    internal double Dioxide(string? text, out bool inTenths)
    {
        inTenths = false;
        var quantity = GasQuantity.CarbonDioxide;
        if (IsBlank(text) || Number(quantity, text!) is not { } number)
        {
            return IsBlank(text) ? Needed(quantity, text) : 0;
        }

        if (number >= Tenths.Minimum && number <= Tenths.Maximum)
        {
            inTenths = true;
            return number / 10;
        }

        if (number < quantity.Minimum)
        {
            _complaints.Add(string.Create(CultureInfo.InvariantCulture, $"CO₂ {number:0.###} %: that is air, not exhaust. See that the probe is in, the pump draws and the hose is tight."));
            return 0;
        }

        return Within(quantity, number);
    }

    private static bool IsBlank(string? text) =>
        string.IsNullOrWhiteSpace(text) || text.Trim().All(c => c is '-' or '–' or '—') || text.Trim() is "n/a" or "N/A";

    // "1,200" is 1200 to one workshop and 1.2 to another; only of HC do both make sense of a kind.
    private static bool MayBeGrouped(GasQuantity quantity, string text) =>
        quantity == GasQuantity.Hydrocarbons
        && text.IndexOfAny([',', '.']) is var mark and > 0
        && text.AsSpan(mark + 1).TrimEnd() is var behind
        && behind.Length >= 3 && char.IsAsciiDigit(behind[0]) && char.IsAsciiDigit(behind[1]) && char.IsAsciiDigit(behind[2]);

    private double? Number(GasQuantity quantity, string text)
    {
        if (!NumberText.TrySplit(text, out var number, out var unit))
        {
            _complaints.Add($"{quantity.Name} '{Shortened(text)}' is not a number.");
            return null;
        }

        if (MayBeGrouped(quantity, text))
        {
            _complaints.Add($"{quantity.Name} '{Shortened(text)}': thousands or decimals? Write whole ppm without a mark, such as 1200.");
            return null;
        }

        if (unit.Length > 0 && !quantity.Units.Contains(unit, StringComparer.OrdinalIgnoreCase))
        {
            _complaints.Add($"{quantity.Name} '{Shortened(text)}': the unit must be {(quantity.Unit.Length > 0 ? quantity.Unit : "left out")}.");
            return null;
        }

        return number;
    }

    private double Within(GasQuantity quantity, double number)
    {
        if (number >= quantity.Minimum && number <= quantity.Maximum)
        {
            return number;
        }

        var unit = quantity.Unit.Length > 0 ? $" {quantity.Unit}" : "";
        var ratio = quantity == GasQuantity.Lambda && number > quantity.Maximum
            ? " If that is an air to fuel ratio, divide it by the one the instrument takes for λ 1."
            : "";
        _complaints.Add(string.Create(CultureInfo.InvariantCulture, $"{quantity.Name} {number:0.###}{unit} is out of range. Allowed: {quantity.Minimum:0.##} to {quantity.Maximum:0.##}{unit}.") + ratio);
        return 0;
    }

    private static string Shortened(string text)
    {
        const int longest = 20;
        return text.Length <= longest ? text : string.Concat(text.AsSpan(0, longest), "…");
    }
}
