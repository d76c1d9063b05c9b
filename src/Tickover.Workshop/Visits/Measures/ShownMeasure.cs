using System.Globalization;
using Tickover.Workshop.Visits.Measures.Units;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Shows values of measures in metric or imperial units, with as many digits as the instrument gives.</summary>
/// <remarks>A true minus, a thin space before the unit, "±" close to its figure. The culture of the machine plays no part.</remarks>
public static class ShownMeasure
{
    private const string ThinSpace = "\u2009";
    private const char Minus = '\u2212';

    /// <summary>From here litres are read to one, below to half a litre.</summary>
    private const double SmallVolumeLitres = 10;

    /// <summary>Beyond it eighths would not be counted exactly.</summary>
    private const double LargestTurns = 1e9;

    private static readonly string[] Eighths = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

    /// <summary>A value with its unit.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="si">The value in the measure's SI unit.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>A text such as "3.6 kg/h"; empty where the value is not finite or the measure is words.</returns>
    public static string Text(MeasureDefinition measure, double si, UnitChoice units) => Joined(Number(measure, si, units), measure.Unit(units));

    /// <summary>A value with what it is good to.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="si">The value in SI.</param>
    /// <param name="bandSi">Half the width of the band, in SI; null where it is not known.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>A text such as "3.6 ±0.1 kg/h".</returns>
    public static string Text(MeasureDefinition measure, double si, double? bandSi, UnitChoice units) => bandSi is { } band && double.IsFinite(band)
        ? Joined($"{Number(measure, si, units)} ±{Band(measure, band, units)}", measure.Unit(units))
        : Text(measure, si, units);

    /// <summary>The number alone, in the unit shown.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="si">The value in SI.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>A text such as "3.6" or "2½"; empty where the value is not finite.</returns>
    public static string Number(MeasureDefinition measure, double si, UnitChoice units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.IsNumber && double.IsFinite(si) ? Shown(measure, In(measure, si, units), units) : "";
    }

    /// <summary>A difference of two values with its sign and unit.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="differenceSi">The difference in SI.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>A text such as "+0.4 kg/h" or "−2 °C".</returns>
    public static string Difference(MeasureDefinition measure, double differenceSi, UnitChoice units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (!measure.IsNumber || !double.IsFinite(differenceSi))
        {
            return "";
        }

        var number = measure.Quantity == Quantity.GaugeScale ? Fixed(differenceSi, 2) : Shown(measure, Step(measure, differenceSi, units), units);
        return Joined(number[0] != Minus && number.Any(c => c is not ('0' or '.')) ? $"+{number}" : number, measure.Unit(units));
    }

    /// <summary>What the measure usually lies between.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>A text such as "Usually 2.0 to 6.0 kg/h"; empty where nothing can be said.</returns>
    public static string Usual(MeasureDefinition measure, UnitChoice units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Usual is { } usual
            ? Joined($"Usually {Trimmed(Number(measure, usual.LowSi, units))} to {Trimmed(Number(measure, usual.HighSi, units))}", measure.Unit(units))
            : "";
    }

    /// <summary>A part of a mean as it is said: whole percent with its sign.</summary>
    /// <param name="part">The part, such as 0.08.</param>
    /// <returns>A text such as "+8 %"; empty where it is not finite.</returns>
    public static string Percent(double part)
    {
        if (!double.IsFinite(part))
        {
            return "";
        }

        var number = Fixed(part * 100, 0);
        return $"{(number is "0" || number[0] == Minus ? "" : "+")}{number}{ThinSpace}%";
    }

    /// <summary>The value in the unit shown, for pictures; never for words.</summary>
    /// <param name="measure">The measure; it has figures.</param>
    /// <param name="si">The value in SI.</param>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>The value in the unit of <see cref="MeasureDefinition.Unit"/>.</returns>
    public static double In(MeasureDefinition measure, double si, UnitChoice units) => QuantityUnits.Find(measure.Quantity, measure.Unit(units)).FromSi(si);

    private static double Step(MeasureDefinition measure, double differenceSi, UnitChoice units) => In(measure, differenceSi, units) - In(measure, 0, units);

    // A band finer than the last digit shown would read as nothing at all, so it keeps one figure of its own.
    private static string Band(MeasureDefinition measure, double bandSi, UnitChoice units)
    {
        var band = Math.Abs(Step(measure, bandSi, units));
        if (band == 0)
        {
            return "0";
        }

        var decimals = 1 - (int)Math.Ceiling(Math.Log10(band));
        return Trimmed(Fixed(band, Math.Clamp(decimals + 1, 0, 6)));
    }

    private static string Shown(MeasureDefinition measure, double value, UnitChoice units) => measure.Quantity switch
    {
        Quantity.GaugeScale => GaugeScale.Show(value),
        Quantity.Turns => InEighths(value),
        Quantity.JetNumber => Trimmed(Fixed(value, 1)),
        Quantity.Resistance => Fixed(value, OhmDecimals(Math.Abs(value))),
        Quantity.Volume when measure.Unit(units) is "L" && Math.Abs(value) < SmallVolumeLitres => Trimmed(Fixed(Math.Round(value * 2, MidpointRounding.AwayFromZero) / 2, 1)),
        _ => Fixed(value, units == UnitChoice.Imperial ? measure.ImperialDecimals : measure.Decimals),
    };

    // Three figures, counted after rounding: 9.996 is 10.0 and not 10.00.
    private static int OhmDecimals(double size) => size switch
    {
        < 9.995 => 2,
        < 99.95 => 1,
        _ => 0,
    };

    private static string InEighths(double turns)
    {
        var all = (long)Math.Round(Math.Min(Math.Abs(turns), LargestTurns) * Eighths.Length, MidpointRounding.AwayFromZero);
        var whole = all / Eighths.Length;
        var rest = Eighths[all % Eighths.Length];
        var text = whole == 0 && rest.Length > 0 ? rest : whole.ToString(CultureInfo.InvariantCulture) + rest;
        return turns < 0 && all > 0 ? Minus + text : text;
    }

    private static string Fixed(double value, int decimals)
    {
        // Math.Round takes 0 to 15 decimals; below zero it is tens and hundreds.
        var places = Math.Clamp(decimals, -9, 9);
        var step = Math.Pow(10, -Math.Min(places, 0));
        var rounded = places < 0 ? Math.Round(value / step, MidpointRounding.AwayFromZero) * step : Math.Round(value, places, MidpointRounding.AwayFromZero);
        var text = (rounded == 0 ? 0 : rounded).ToString("F" + Math.Max(places, 0).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Replace('-', Minus);
    }

    private static string Trimmed(string number) => number.Contains('.', StringComparison.Ordinal) ? number.TrimEnd('0').TrimEnd('.') : number;

    private static string Joined(string number, string unit) => (number, unit) switch
    {
        ("", _) or (_, "") => number,
        (_, "°") => number + unit,
        ("1" or "⅛" or "¼" or "⅜" or "½" or "⅝" or "¾" or "⅞", "turns" or "years" or "months" or "miles") => $"{number}{ThinSpace}{unit[..^1]}",
        _ => $"{number}{ThinSpace}{unit}",
    };
}
