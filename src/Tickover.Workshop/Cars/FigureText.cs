using System.Globalization;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.Cars;

/// <summary>Reads and shows figures as a workshop writes them: the border between text with units and SI.</summary>
/// <remarks>A decimal comma and a decimal point count alike; thousands are not grouped. Never throws for what somebody typed.</remarks>
public static class FigureText
{
    /// <summary>The trade numbers jets in hundredths of a millimetre.</summary>
    private const double MetresPerJetNumber = 1e-5;

    /// <summary>Below this a pressure is a depression and stands in Pa; above, in hPa as on a barometer.</summary>
    private const double LargestPressureShownInPascals = 1000;

    private const int HectopascalIndex = 1;

    /// <summary>No figure comes near it, and no unit's factor carries what lies below it out of a double's range.</summary>
    private const double LargestRead = 1e100;

    private static readonly string[] TurnWords = ["turn", "turns"];

    /// <summary>Reads a text.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="text">The text, such as "32 mm", "1,25 in", "135" for a jet.</param>
    /// <param name="si">The value in SI units, finite; 0 where the text is not understood.</param>
    /// <returns>Whether the text is understood; the range is not judged here.</returns>
    public static bool TryParse(Measure measure, string text, out double si) => Explain(measure, text, out si) is null;

    /// <summary>Reads a text and says what is wrong with it.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="text">The text.</param>
    /// <param name="si">The value in SI units, finite.</param>
    /// <returns>Null where the text is understood, else what is wrong and what to write.</returns>
    public static FigureTextProblem? Explain(Measure measure, string text, out double si)
    {
        ArgumentNullException.ThrowIfNull(text);
        si = 0;
        if (!NumberText.TrySplit(text, out var number, out var unit))
        {
            return new($"\"{Shortened(text)}\" is not a number with a unit", Form(measure), $"Write it as {Example(measure)}.");
        }

        if (Math.Abs(number) > LargestRead)
        {
            return new($"\"{Shortened(text)}\" is no size of anything on a car", Form(measure), $"Write it as {Example(measure)}.");
        }

        return unit.Length == 0 ? Bare(measure, number, out si) : WithUnit(measure, number, unit, out si);
    }

    /// <summary>The figure as the workshop reads it, with its unit.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>A text such as "32 mm", or "135" for a jet.</returns>
    public static string Show(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Show(figure.Definition.Measure, figure.Si);
    }

    /// <summary>A row of emulsion holes as the document writes it.</summary>
    /// <param name="row">The row.</param>
    /// <returns>A text such as "2 x 1 mm at 6 mm".</returns>
    public static string Show(CarHoleRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return HoleText.Show(row);
    }

    /// <summary>A progression hole as the document writes it.</summary>
    /// <param name="hole">The hole.</param>
    /// <returns>A text such as "1.1 mm at 0.8 mm".</returns>
    public static string Show(CarProgressionHole hole)
    {
        ArgumentNullException.ThrowIfNull(hole);
        return HoleText.Show(hole);
    }

    /// <summary>A value as the workshop reads it, with its unit.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="si">The value in SI.</param>
    /// <returns>A text that <see cref="TryParse"/> reads back to within its last digit.</returns>
    public static string Show(Measure measure, double si)
    {
        var unit = Unit(measure, si);
        var number = Number(measure, si);
        return unit.Length == 0 ? number : unit is "°" ? number + unit : $"{number} {unit}";
    }

    /// <summary>The number alone, in the unit that <see cref="Unit"/> names.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="si">The value in SI.</param>
    /// <returns>The number with sensible digits and a decimal point.</returns>
    public static string Number(Measure measure, double si)
    {
        var units = MeasureUnits.Of(measure);
        return measure switch
        {
            Measure.JetBore => Digits(si / MetresPerJetNumber, 2),
            Measure.Length => Digits(units!.FromSi(si, 0), Math.Abs(units.FromSi(si, 0)) < 1 ? 3 : 2),
            Measure.Pressure => Math.Abs(si) < LargestPressureShownInPascals ? Digits(si, 0) : Digits(units!.FromSi(si, HectopascalIndex), 1),
            Measure.Speed or Measure.Altitude or Measure.Count => Digits(units?.FromSi(si, 0) ?? si, 0),
            Measure.Volume or Measure.Angle or Measure.Temperature or Measure.TemperatureDifference or Measure.Percent => Digits(units!.FromSi(si, 0), 1),
            Measure.Area or Measure.Heat => Digits(units!.FromSi(si, 0), 2),
            Measure.Turns => Digits(si, 2),
            _ => Digits(si, 3),
        };
    }

    /// <summary>The unit in which a value is shown.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="si">The value in SI; pressures change unit with size.</param>
    /// <returns>The unit, empty for plain numbers and jets.</returns>
    public static string Unit(Measure measure, double si) => measure switch
    {
        Measure.Length => "mm",
        Measure.Volume => "cm³",
        Measure.Angle => "°",
        Measure.Speed => "rpm",
        Measure.Pressure => Math.Abs(si) < LargestPressureShownInPascals ? "Pa" : "hPa",
        Measure.Temperature => "°C",
        Measure.TemperatureDifference => "K",
        Measure.Altitude => "m",
        Measure.Turns => "turns",
        Measure.Percent => "%",
        Measure.Area => "mm²",
        Measure.Heat => "MJ/kg",
        _ => string.Empty,
    };

    /// <summary>How a quantity of this kind is written, in words.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <returns>A phrase such as "a number with mm, cm, m or in".</returns>
    public static string Form(Measure measure) => measure switch
    {
        Measure.Count => "a whole number",
        Measure.Ratio => "a plain number",
        Measure.Turns => "a number of turns",
        _ => $"a number with {MeasureUnits.Of(measure)!.Words}",
    };

    /// <summary>An example of how a quantity of this kind is written.</summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <returns>The example in quotes.</returns>
    public static string Example(Measure measure) => measure switch
    {
        Measure.JetBore => "\"135\" (1/100 mm) or \"1.35 mm\"",
        Measure.Length => "\"32 mm\" or \"1.25 in\"",
        Measure.Volume => "\"450 cm³\"",
        Measure.Angle => "\"8°\" or \"8 deg\"",
        Measure.Speed => "\"5500 rpm\"",
        Measure.Pressure => "\"1013 hPa\"",
        Measure.Temperature => "\"20 °C\"",
        Measure.TemperatureDifference => "\"10 K\"",
        Measure.Altitude => "\"120 m\"",
        Measure.Turns => "\"2.5\"",
        Measure.Percent => "\"60 %\"",
        Measure.Area => "\"2 mm²\"",
        Measure.Heat => "\"2.75 MJ/kg\"",
        Measure.Count => "\"2\"",
        _ => "\"0.8\"",
    };

    private static FigureTextProblem? Bare(Measure measure, double number, out double si)
    {
        si = 0;
        switch (measure)
        {
            case Measure.JetBore:
                si = number * MetresPerJetNumber;
                return null;
            case Measure.Count when number != Math.Floor(number):
                return new($"{Digits(number, 3)} is not a whole number", Form(measure), "Write a whole number.");
            case Measure.Count or Measure.Ratio or Measure.Turns:
                si = number;
                return null;
            default:
                var with = $"{Digits(number, 3)} {Unit(measure, LargestPressureShownInPascals)}";
                return new($"{Digits(number, 3)} has no unit", Form(measure), $"Write \"{with}\" if that is what is meant.");
        }
    }

    private static FigureTextProblem? WithUnit(Measure measure, double number, string unit, out double si)
    {
        if (MeasureUnits.Of(measure) is { } units)
        {
            return units.TryToSi(number, unit, out si) ? null : UnknownUnit(measure, unit);
        }

        var isTurns = measure == Measure.Turns && TurnWords.Contains(unit, StringComparer.OrdinalIgnoreCase);
        si = isTurns ? number : 0;
        return isTurns ? null : UnknownUnit(measure, unit);
    }

    private static FigureTextProblem UnknownUnit(Measure measure, string unit) =>
        new($"\"{Shortened(unit)}\" is not a unit used here", Form(measure), $"Write it as {Example(measure)}.");

    private static string Digits(double value, int decimals)
    {
        // Beyond the digits a double holds, rounding has no meaning; "R" keeps what was there.
        const double LargestRounded = 1e12;
        if (Math.Abs(value) > LargestRounded)
        {
            return value.ToString("R", CultureInfo.InvariantCulture);
        }

        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private static string Shortened(string text)
    {
        const int Longest = 40;
        return text.Length <= Longest ? text : string.Concat(text.AsSpan(0, Longest), "…");
    }
}
