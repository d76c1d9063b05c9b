using System.Globalization;

namespace Tickover.Workshop.Mixture;

/// <summary>Numbers of a working as a person reads them: three figures, unit behind a thin space.</summary>
internal static class WorkingNumber
{
    private const double Hour = 3600;

    internal static string PerHour(double kilogramsPerSecond) => Three(kilogramsPerSecond * Hour) + "\u2009kg/h";

    internal static string GramsPerSecond(double kilogramsPerSecond) => Three(kilogramsPerSecond * 1000) + "\u2009g/s";

    internal static string Millimetres(double metres) => Fixed(metres * 1000, 2) + "\u2009mm";

    internal static string SquareMillimetres(double squareMetres) => Three(squareMetres * 1e6) + "\u2009mm²";

    internal static string Pascals(double pascals) =>
        Math.Abs(pascals) >= 10_000 ? Three(pascals / 1000) + "\u2009kPa" : Fixed(pascals, 0) + "\u2009Pa";

    internal static string Percent(double part) => Fixed(part * 100, 0) + "\u2009%";

    internal static string Density(double kilogramsPerCubicMetre) => Three(kilogramsPerCubicMetre) + "\u2009kg/m³";

    internal static string Volume(double cubicMetres) => Fixed(cubicMetres * 1e6, 0) + "\u2009cm³";

    internal static string Rpm(double rpm) => Fixed(rpm, 0) + "\u2009rpm";

    internal static string Degrees(double degrees) => Fixed(degrees, 1) + "°";

    internal static string Fixed(double value, int digits) =>
        value.ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace('-', '\u2212');

    /// <summary>Three significant figures without an exponent.</summary>
    internal static string Three(double value)
    {
        const int most = 4;
        if (value == 0 || !double.IsFinite(value))
        {
            return "0";
        }

        var digits = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, most);
        return Fixed(value, digits);
    }
}
