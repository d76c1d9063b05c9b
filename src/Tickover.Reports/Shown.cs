using System.Globalization;

namespace Tickover.Reports;

/// <summary>How figures are written, everywhere alike: as many digits as are meant, true minus, a thin space before a unit.</summary>
/// <remarks>British forms by invariant rules: point for decimals, comma for thousands, whatever the machine's culture.</remarks>
public static class Shown
{
    /// <summary>What stands where there is no figure.</summary>
    public const string Nothing = "none";

    private const char Minus = '\u2212';

    // Narrow no-break space: thin, and the unit stays with its figure at a line's end
    private const char Thin = '\u202F';
    private const double SecondsPerHour = 3600;

    /// <summary>λ to 0.01, such as "1.04".</summary>
    /// <param name="lambda">λ, 1.</param>
    /// <returns>The figure without a unit.</returns>
    public static string Lambda(double lambda) => Number(lambda, "0.00");

    /// <summary>A difference of λ to 0.01 with its sign, such as "−0.02".</summary>
    /// <param name="difference">Difference, 1.</param>
    /// <returns>The figure; "0.00" without a sign.</returns>
    public static string LambdaDifference(double difference)
    {
        var text = Number(difference, "0.00");
        return difference > 0 && !string.Equals(text, "0.00", StringComparison.Ordinal) ? $"+{text}" : text;
    }

    /// <summary>A speed to 10 rpm with a comma for thousands, such as "2,750".</summary>
    /// <param name="rpm">Engine speed, rpm.</param>
    /// <returns>The figure without its unit.</returns>
    public static string Speed(double rpm) => Number(Math.Round(rpm / 10, MidpointRounding.AwayFromZero) * 10, "#,0");

    /// <summary>A speed with its unit, such as "2,750 rpm".</summary>
    /// <param name="rpm">Engine speed, rpm.</param>
    /// <returns>Figure and unit.</returns>
    public static string SpeedWithUnit(double rpm) => WithUnit(Speed(rpm), "rpm");

    /// <summary>A throttle opening, to a whole degree from 10° and to half of one below, such as "11°" or "2.5°".</summary>
    /// <param name="degrees">Opening, degrees.</param>
    /// <returns>The figure with its sign.</returns>
    public static string Opening(double degrees)
    {
        const double coarseFrom = 10;
        return Math.Abs(degrees) >= coarseFrom ? Number(degrees, "0") + "°" : Number(Math.Round(degrees * 2) / 2, "0.#") + "°";
    }

    /// <summary>A mass flow in kg/h to three figures, such as "14.6", "0.975" or "0.08".</summary>
    /// <param name="kilogramsPerSecond">Flow, kg/s.</param>
    /// <returns>The figure without its unit.</returns>
    public static string Flow(double kilogramsPerSecond)
    {
        var hourly = kilogramsPerSecond * SecondsPerHour;
        return Number(hourly, Math.Abs(hourly) switch
        {
            >= 100 => "0",
            >= 10 => "0.0",
            >= 1 => "0.00",
            >= 0.1 => "0.000",
            _ => "0.00",
        });
    }

    /// <summary>A mass flow with its unit, such as "0.975 kg/h".</summary>
    /// <param name="kilogramsPerSecond">Flow, kg/s.</param>
    /// <returns>Figure and unit.</returns>
    public static string FlowWithUnit(double kilogramsPerSecond) => WithUnit(Flow(kilogramsPerSecond), "kg/h");

    /// <summary>A fuel flow to two digits after the point, for figures that stand side by side, such as "0.79".</summary>
    /// <param name="kilogramsPerSecond">Flow, kg/s.</param>
    /// <returns>The figure without its unit.</returns>
    public static string FlowInBar(double kilogramsPerSecond) => Number(kilogramsPerSecond * SecondsPerHour, "0.00");

    /// <summary>A length in mm with at most so many digits as it has, such as "34 mm" or "4.5 mm".</summary>
    /// <param name="metres">Length, m.</param>
    /// <returns>Figure and unit.</returns>
    public static string Millimetres(double metres) => WithUnit(Number(metres * 1000, "0.##"), "mm");

    /// <summary>A jet by the trade's number, its bore in 1/100 mm, such as "135" or "47.5".</summary>
    /// <param name="metres">Bore, m.</param>
    /// <returns>The number.</returns>
    public static string Jet(double metres) => Number(metres * 1e5, "0.#");

    /// <summary>Turns of a screw to an eighth, such as "2¼" or "⅝".</summary>
    /// <param name="turns">Turns, 1.</param>
    /// <returns>The figure.</returns>
    public static string Turns(double turns)
    {
        string[] eighths = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
        if (!double.IsFinite(turns))
        {
            return Nothing;
        }

        var count = (int)Math.Round(Math.Abs(turns) * eighths.Length);
        var (whole, part) = Math.DivRem(count, eighths.Length);
        var sign = turns < 0 && count > 0 ? Minus.ToString() : "";
        return whole == 0 && part > 0 ? sign + eighths[part] : sign + whole.ToString(CultureInfo.InvariantCulture) + eighths[part];
    }

    /// <summary>A percentage without decimals, such as "83 %".</summary>
    /// <param name="part">Part of one.</param>
    /// <returns>Figure and sign.</returns>
    public static string Percent(double part) => WithUnit(Number(part * 100, "0"), "%");

    /// <summary>Two ends of a range with the word between, such as "0.88 to 0.95".</summary>
    /// <param name="low">First figure as shown.</param>
    /// <param name="high">Last figure as shown.</param>
    /// <returns>The range; one figure where both read alike.</returns>
    public static string Range(string low, string high) =>
        string.Equals(low, high, StringComparison.Ordinal) ? low : $"{low} to {high}";

    /// <summary>A figure with its unit, a thin space between.</summary>
    /// <param name="figure">The figure as shown.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>Both.</returns>
    public static string WithUnit(string figure, string unit) => $"{figure}{Thin}{unit}";

    private static string Number(double value, string format)
    {
        if (!double.IsFinite(value))
        {
            return Nothing;
        }

        var text = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        // What rounds to zero has no sign
        var isZero = text.All(c => c is '0' or '.' or ',');
        return value < 0 && !isZero ? Minus + text : text;
    }
}
