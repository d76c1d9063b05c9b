using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Tickover.Instruments.Logs;

/// <summary>The units columns come in, with the spellings people use.</summary>
public static class LogUnits
{
    /// <summary>Stoichiometric ratio nearly every display multiplies λ by, whatever the fuel (trade practice).</summary>
    public const double UsualStoichiometry = 14.7;

    private const double LeastStoichiometry = 6;         // methanol 6.4
    private const double MostStoichiometry = 16;         // petrol 14.1 to 14.8; methane 17 is no fuel of these cars

    private static readonly (string Name, PressureUnit Unit, string[] Spellings)[] Pressures =
    [
        ("kPa", PressureUnit.Kilopascal, ["kpa", "kn/m2"]),
        ("inHg", PressureUnit.InchOfMercury, ["inhg", "\"hg", "inchhg", "inchesofmercury", "hginch"]),
        ("mmHg", PressureUnit.MillimeterOfMercury, ["mmhg", "torr"]),
        ("mbar", PressureUnit.Millibar, ["mbar", "mb", "hpa", "millibar"]),
        ("psi", PressureUnit.PoundForcePerSquareInch, ["psi", "lb/in2", "lbf/in2"]),
        ("bar", PressureUnit.Bar, ["bar"]),
        ("Pa", PressureUnit.Pascal, ["pa"]),
    ];

    private static readonly (string Name, UnitForm Form, string[] Endings)[] References =
    [
        ("abs", UnitForm.Linear, ["abs", "absolute", "a"]),
        ("gauge", UnitForm.OverAtmosphere, ["gauge", "rel", "relative", "gage", "g"]),
        ("vac", UnitForm.UnderAtmosphere, ["vac", "vacuum", "depression", "dep"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] Times =
    [
        (new("s", 1), ["s", "sec", "secs", "second", "seconds"]),
        (new("ms", 1e-3), ["ms", "msec", "millis", "millisecond", "milliseconds"]),
        (new("µs", 1e-6), ["us", "µs", "μs", "usec", "micros", "microseconds"]),
        (new("min", 60), ["min", "mins", "minute", "minutes"]),
        (new("h", 3600), ["h", "hr", "hours"]),
        (new("d", 86400), ["d", "day", "days"]),
        (new("clock", 1, 0, UnitForm.Clock), ["clock", "iso", "utc", "local", "hh:mm:ss", "hh:mm:ss.sss", "mm:ss", "datetime"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] EngineSpeeds =
    [
        (new("rpm", 1), ["rpm", "1/min", "min-1", "r/min", "rev/min", "u/min", "tr/min"]),
        (new("rpm x2", 2), ["rpmx2", "rpm*2"]),
        (new("rpm /2", 0.5), ["rpm/2", "rpmx0.5"]),
        (new("rpm x1000", 1000), ["rpmx1000", "krpm", "x1000", "rpm/1000", "1000rpm"]),
        (new("1/s", 60), ["1/s", "hz", "rev/s", "rps"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] Throttles =
    [
        (new("%", 1), ["%", "percent", "pct", "perc"]),
        (new("°", 1), ["°", "deg", "degs", "degree", "degrees"]),
        (new("fraction", 1), ["fraction", "0-1", "0..1"]),
        (new("V", 1), ["v", "volt", "volts"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] Temperatures =
    [
        (new("°C", 1, Temperature.FromDegreesCelsius(0).Kelvins), ["°c", "c", "degc", "celsius", "deg.c"]),
        (Fahrenheit(), ["°f", "f", "degf", "fahrenheit", "deg.f"]),
        (new("K", 1), ["k", "kelvin"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] RoadSpeeds =
    [
        (new("km/h", UnitConverter.Convert(1, SpeedUnit.KilometerPerHour, SpeedUnit.MeterPerSecond)), ["km/h", "kmh", "kph", "kmph"]),
        (new("mph", UnitConverter.Convert(1, SpeedUnit.MilePerHour, SpeedUnit.MeterPerSecond)), ["mph", "mi/h", "miles/h"]),
        (new("m/s", 1), ["m/s", "mps"]),
        (new("kn", UnitConverter.Convert(1, SpeedUnit.Knot, SpeedUnit.MeterPerSecond)), ["kn", "kt", "knots", "knot"]),
    ];

    private static readonly (LogUnit Unit, string[] Spellings)[] Lambdas =
    [
        (new("λ", 1), ["λ", "lambda", "-"]),
        (new("φ", 1, 0, UnitForm.Inverse), ["φ", "phi", "eq", "equivalence"]),
    ];

    // Units of columns that are not used, so that a row of units is known as one.
    private static readonly string[] OtherUnits = ["", "ppm", "vol%", "g/s", "kg/h", "ratio", "bool", "#", "m", "ft", "°btdc", "g", "n/a", "text", "ma", "mv", "afr", "date"];

    private static readonly LogUnit None = new("", 1);

    /// <summary>An air/fuel ratio that is λ times a stoichiometric ratio.</summary>
    /// <param name="stoichiometry">The ratio the instrument multiplied by, 6 to 16.</param>
    /// <returns>The unit.</returns>
    public static LogUnit AirFuelRatio(double stoichiometry) =>
        new(string.Create(CultureInfo.InvariantCulture, $"AFR {stoichiometry:0.##}"), 1 / stoichiometry);

    /// <summary>Names of the units a quantity may have, for help and for choosing.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>The names.</returns>
    public static IReadOnlyList<string> NamesOf(LogQuantity quantity) => [.. Of(quantity).Select(u => u.Name)];

    /// <summary>Reads a unit as people write it.</summary>
    /// <param name="quantity">What the column holds.</param>
    /// <param name="text">The unit's text.</param>
    /// <returns>The unit; null where no such unit is known. A pressure without "abs", "gauge" or "vac" is absolute in a manifold and over the atmosphere in a fuel pipe.</returns>
    public static LogUnit? Find(LogQuantity quantity, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = Plain(text);
        return quantity switch
        {
            LogQuantity.Lambda => Listed(Lambdas, plain) ?? Ratio(plain),
            LogQuantity.ManifoldPressure => Pressure(plain, "abs"),
            LogQuantity.FuelPressure => Pressure(plain, "gauge") is { } unit ? unit with { Form = UnitForm.Linear } : null,
            LogQuantity.Ignored => None,
            _ => Listed(TableOf(quantity), plain),
        };
    }

    internal static IEnumerable<LogUnit> Of(LogQuantity quantity) => quantity switch
    {
        LogQuantity.Lambda => [.. Lambdas.Select(l => l.Unit), AirFuelRatio(UsualStoichiometry)],
        LogQuantity.ManifoldPressure => from p in Pressures from r in References select PressureUnitOf(p.Name, r.Name),
        LogQuantity.FuelPressure => Pressures.Select(p => PressureUnitOf(p.Name, "gauge") with { Form = UnitForm.Linear }),
        _ => TableOf(quantity).Select(t => t.Unit),
    };

    /// <summary>Whether a text is a unit of anything a log holds.</summary>
    internal static bool IsUnit(string text)
    {
        var bare = text.Trim('(', ')', '[', ']', ' ');
        return OtherUnits.Contains(Plain(bare), StringComparer.Ordinal)
            || Enum.GetValues<LogQuantity>().Any(q => q is not LogQuantity.Ignored && bare.Length > 0 && Find(q, bare) is not null);
    }

    /// <summary>The pressure's unit without its reference ("mmHg"), or null.</summary>
    internal static string? PressureNameIn(string text) => PressureName(Plain(text)).Name;

    /// <summary>The reference a text names: "abs", "gauge", "vac", or null.</summary>
    internal static string? PressureReferenceIn(string text) => PressureName(Plain(text)).Reference;

    internal static LogUnit PressureUnitOf(string name, string reference)
    {
        var scale = UnitConverter.Convert(1, Pressures.First(p => string.Equals(p.Name, name, StringComparison.Ordinal)).Unit, PressureUnit.Pascal);
        return new LogUnit($"{name} {reference}", scale, 0, References.First(r => string.Equals(r.Name, reference, StringComparison.Ordinal)).Form);
    }

    private static (LogUnit Unit, string[] Spellings)[] TableOf(LogQuantity quantity) => quantity switch
    {
        LogQuantity.Time => Times,
        LogQuantity.EngineSpeed => EngineSpeeds,
        LogQuantity.Throttle => Throttles,
        LogQuantity.RoadSpeed => RoadSpeeds,
        LogQuantity.CoolantTemperature or LogQuantity.OilTemperature or LogQuantity.AirTemperature => Temperatures,
        _ => [],
    };

    private static LogUnit? Listed((LogUnit Unit, string[] Spellings)[] table, string plain) =>
        table.FirstOrDefault(t => string.Equals(Plain(t.Unit.Name), plain, StringComparison.Ordinal) || t.Spellings.Contains(plain, StringComparer.Ordinal)).Unit;

    private static LogUnit? Ratio(string plain)
    {
        var number = plain.Replace("afr", string.Empty, StringComparison.Ordinal).Replace(":1", string.Empty, StringComparison.Ordinal).Trim(':', '(', ')', '@');
        if (number.Length == 0)
        {
            return plain.Length == 0 ? null : AirFuelRatio(UsualStoichiometry);
        }

        return double.TryParse(number.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var ratio)
            && ratio is >= LeastStoichiometry and <= MostStoichiometry
            ? AirFuelRatio(ratio)
            : null;
    }

    private static LogUnit? Pressure(string plain, string reference) =>
        PressureName(plain) is { Name: { } name } found ? PressureUnitOf(name, found.Reference ?? reference) : null;

    private static (string? Name, string? Reference) PressureName(string plain)
    {
        foreach (var (name, _, spellings) in Pressures)
        {
            foreach (var spelling in spellings.Where(s => plain.StartsWith(s, StringComparison.Ordinal)))
            {
                var rest = plain[spelling.Length..].Trim('(', ')', '_', '-');
                if (rest.Length == 0 || References.Any(r => r.Endings.Contains(rest, StringComparer.Ordinal)))
                {
                    return (name, rest.Length == 0 ? null : References.First(r => r.Endings.Contains(rest, StringComparer.Ordinal)).Name);
                }
            }
        }

        return (null, null);
    }

    private static LogUnit Fahrenheit()
    {
        var zero = Temperature.FromDegreesFahrenheit(0).Kelvins;
        return new LogUnit("°F", Temperature.FromDegreesFahrenheit(1).Kelvins - zero, zero);
    }

    private static string Plain(string text) =>
        string.Concat(text.ToLowerInvariant().Replace('º', '°').Where(c => !char.IsWhiteSpace(c) && c is not '[' and not ']'));
}
