using System.Globalization;
using Tickover.Physics.Leaks;

namespace Tickover.Workshop.Leaks;

/// <summary>Figures of a leak test in words, everywhere alike.</summary>
public static class LeakFigures
{
    private const char Thin = '\u202F';

    /// <summary>A leak in mbar l/s to two digits, such as "0.17 mbar l/s".</summary>
    /// <param name="pascalCubicMetresPerSecond">The leak, Pa m³/s.</param>
    /// <returns>Figure and unit.</returns>
    public static string Leak(double pascalCubicMetresPerSecond) => $"{Two(pascalCubicMetresPerSecond / LeakUnits.MillibarLitrePerSecond)}{Thin}mbar{Thin}l/s";

    /// <summary>A pressure in the gauge's unit to three digits.</summary>
    /// <param name="pascals">Pa.</param>
    /// <param name="unit">The unit.</param>
    /// <returns>Figure and unit.</returns>
    public static string Pressure(double pascals, PressureUnit unit) => $"{Three(pascals / unit.Pascals)}{Thin}{unit.Words}";

    /// <summary>The width of a hole in mm to two digits.</summary>
    /// <param name="metres">m.</param>
    /// <returns>Figure and unit.</returns>
    public static string Hole(double metres) => $"{Two(metres * 1000)}{Thin}mm";

    /// <summary>A length of time in whole seconds, minutes or tenths of hours, rounded up.</summary>
    /// <param name="seconds">s.</param>
    /// <returns>Words.</returns>
    public static string Time(double seconds) => seconds switch
    {
        < 90 => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(seconds):0} seconds"),
        < 5400 => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(seconds / 60):0} minutes"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(seconds / 360) / 10:0.#} hours"),
    };

    private static string Two(double value) => Rounded(value, 2);

    private static string Three(double value) => Rounded(value, 3);

    private static string Rounded(double value, int digits)
    {
        if (value == 0)
        {
            return "0";
        }

        var places = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        var text = Math.Abs(value).ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return value < 0 ? "\u2212" + text : text;
    }
}
