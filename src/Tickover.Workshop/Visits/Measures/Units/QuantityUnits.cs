using UnitsNet;
using UnitsNet.Units;

namespace Tickover.Workshop.Visits.Measures.Units;

/// <summary>The units in which each quantity of the catalogue is read and shown. UnitsNet converts (docs/decisions/0010).</summary>
internal static class QuantityUnits
{
    private static readonly Dictionary<Quantity, IReadOnlyList<QuantityUnit>> Table = new()
    {
        [Quantity.Airflow] =
        [
            Mass("kg/h", MassFlowUnit.KilogramPerHour, "kgh", "kg/hr", "kg/hour"), Mass("lb/h", MassFlowUnit.PoundPerHour, "lbh", "lb/hr", "lbs/h", "lbs/hr"),
            Mass("g/s", MassFlowUnit.GramPerSecond),
        ],
        [Quantity.Pressure] = Pressures("bar", "psi", "kPa", "mbar", "hPa", "Pa", "inHg", "mmHg", "mmH₂O", "inH₂O"),
        [Quantity.AirPressure] = Pressures("hPa", "inHg", "mbar", "kPa", "mmHg", "Pa", "bar"),
        [Quantity.Depression] = Pressures("kPa", "inHg", "mbar", "hPa", "cmHg", "mmHg", "bar", "psi", "mmH₂O", "inH₂O", "Pa"),
        [Quantity.Length] =
        [
            Line("mm", LengthUnit.Millimeter), Line("in", LengthUnit.Inch, "inch", "inches", "\"", "″", "”"), Line("cm", LengthUnit.Centimeter),
            Line("m", LengthUnit.Meter, "metre", "metres"), Line("ft", LengthUnit.Foot, "feet", "foot", "'", "′"), Line("thou", LengthUnit.Mil, "thousandths"),
        ],
        [Quantity.Distance] =
            [Line("km", LengthUnit.Kilometer), Line("miles", LengthUnit.Mile, "mile", "mi"), Line("m", LengthUnit.Meter), Line("ft", LengthUnit.Foot, "feet")],
        [Quantity.Volume] =
        [
            Space("L", VolumeUnit.Liter, "litre", "litres", "liter", "liters", "ltr"), Space("gal", VolumeUnit.ImperialGallon, "imp gal", "gallon", "gallons"),
            Space("US gal", VolumeUnit.UsGallon, "us gallon", "us gallons"), Space("cm³", VolumeUnit.CubicCentimeter, "cc", "ccm"), Space("mL", VolumeUnit.Milliliter),
            Space("pt", VolumeUnit.ImperialPint, "pint", "pints"), Space("fl oz", VolumeUnit.ImperialOunce),
        ],
        [Quantity.VolumeFlow] =
        [
            Stream("L/h", VolumeFlowUnit.LiterPerHour, "l/hr"), Stream("L/min", VolumeFlowUnit.LiterPerMinute), Stream("cm³/min", VolumeFlowUnit.CubicCentimeterPerMinute, "cc/min", "ml/min"),
            Stream("gal/h", VolumeFlowUnit.UkGallonPerHour, "gal/hr", "gph"), Stream("US gal/h", VolumeFlowUnit.UsGallonPerHour),
        ],
        [Quantity.Temperature] =
        [
            Heat("°C", TemperatureUnit.DegreeCelsius, "c", "degc", "celsius"), Heat("°F", TemperatureUnit.DegreeFahrenheit, "f", "degf", "fahrenheit"), Heat("K", TemperatureUnit.Kelvin, "kelvin"),
        ],
        [Quantity.Resistance] =
            [Ohms("Ω", ElectricResistanceUnit.Ohm, "ohm", "ohms", "r"), Ohms("kΩ", ElectricResistanceUnit.Kiloohm, "kohm", "kohms", "k"), Ohms("MΩ", ElectricResistanceUnit.Megaohm, "megohm")],
        [Quantity.Voltage] = [Volts("V", ElectricPotentialUnit.Volt, "volt", "volts"), Volts("mV", ElectricPotentialUnit.Millivolt)],
        [Quantity.Duration] =
        [
            Time("s", DurationUnit.Second, "sec", "secs", "second", "seconds"), Time("min", DurationUnit.Minute, "mins", "minute", "minutes"), Time("h", DurationUnit.Hour, "hr", "hrs", "hour", "hours"),
            Time("days", DurationUnit.Day, "day", "d"), Time("months", DurationUnit.Month30, "month"), Time("years", DurationUnit.Year365, "year", "yr", "yrs"),
        ],
        [Quantity.Mass] = [Weight("g", MassUnit.Gram, "gram", "grams"), Weight("oz", MassUnit.Ounce, "ounce", "ounces"), Weight("kg", MassUnit.Kilogram), Weight("lb", MassUnit.Pound, "lbs")],
        [Quantity.Force] = [Pull("N", ForceUnit.Newton), Pull("lbf", ForceUnit.PoundForce, "lb", "lbs"), Pull("kgf", ForceUnit.KilogramForce, "kg")],
        [Quantity.Torque] = [Twist("N m", TorqueUnit.NewtonMeter, "nm"), Twist("lbf ft", TorqueUnit.PoundForceFoot, "lb ft", "ft lb", "ft lbs", "lbs ft", "ft lbf"), Twist("kgf m", TorqueUnit.KilogramForceMeter, "kg m")],
        [Quantity.Angle] = [Arc("°", AngleUnit.Degree, "deg", "degree", "degrees"), Arc("rad", AngleUnit.Radian)],
        [Quantity.EngineSpeed] = [Spin("rpm", RotationalSpeedUnit.RevolutionPerMinute, "r/min", "rev/min", "1/min", "min1", "revs"), Spin("rad/s", RotationalSpeedUnit.RadianPerSecond)],
        [Quantity.Percent] = [Part("%", RatioUnit.Percent, "percent", "per cent")],
        [Quantity.GasPercent] = [Part("%", RatioUnit.Percent, "vol%", "%vol", "percent", "per cent"), Part("ppm", RatioUnit.PartPerMillion)],
        [Quantity.PartsPerMillion] = [Part("ppm", RatioUnit.PartPerMillion), Part("%", RatioUnit.Percent, "vol%", "%vol")],
        [Quantity.Lambda] = [Plain("", "λ", "lambda")],
        [Quantity.Turns] = [Plain("turns", "turn", "t")],
        [Quantity.JetNumber] = [new("", v => Length.FromMillimeters(v / 100).Meters, si => Length.FromMeters(si).Millimeters * 100), Line("mm", LengthUnit.Millimeter), Line("in", LengthUnit.Inch, "\"")],
        [Quantity.Count] = [Plain("")],
        [Quantity.GaugeScale] = [Plain(""), Part("%", RatioUnit.Percent, "percent", "per cent")],
        [Quantity.Words] = [],
        [Quantity.Choice] = [],
    };

    /// <summary>The units of a quantity, the usual one first; empty for words.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>The units.</returns>
    public static IReadOnlyList<QuantityUnit> Of(Quantity quantity) => Table[quantity];

    /// <summary>The unit of a symbol.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="symbol">A symbol of the table.</param>
    /// <returns>The unit.</returns>
    public static QuantityUnit Find(Quantity quantity, string symbol) => Table[quantity].First(u => string.Equals(u.Symbol, symbol, StringComparison.Ordinal));

    /// <summary>The unit somebody typed.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="typed">What stands behind the number.</param>
    /// <returns>The unit, or null where it is none of this quantity.</returns>
    public static QuantityUnit? Written(Quantity quantity, string typed) =>
        Table[quantity].FirstOrDefault(u => string.Equals(u.Symbol, typed, StringComparison.Ordinal)) ?? Table[quantity].FirstOrDefault(u => u.IsWritten(typed));

    private static IReadOnlyList<QuantityUnit> Pressures(params string[] symbols) => [.. symbols.Select(Pressed)];

    private static QuantityUnit Pressed(string symbol) => symbol switch
    {
        "bar" => Press(symbol, PressureUnit.Bar),
        "psi" => Press(symbol, PressureUnit.PoundForcePerSquareInch, "lb/in2", "lbf/in2", "lb"),
        "kPa" => Press(symbol, PressureUnit.Kilopascal),
        "hPa" => Press(symbol, PressureUnit.Hectopascal),
        "mbar" => Press(symbol, PressureUnit.Millibar, "mb"),
        "inHg" => Press(symbol, PressureUnit.InchOfMercury, "\"hg", "inches hg", "inch hg"),
        "mmHg" => Press(symbol, PressureUnit.MillimeterOfMercury),
        "cmHg" => new(symbol, v => Pressure.FromMillimetersOfMercury(v * 10).Pascals, si => Pressure.FromPascals(si).MillimetersOfMercury / 10),
        "mmH₂O" => Press(symbol, PressureUnit.MillimeterOfWaterColumn, "mmh2o", "mm wg"),
        "inH₂O" => Press(symbol, PressureUnit.InchOfWaterColumn, "inh2o", "in wg"),
        _ => Press(symbol, PressureUnit.Pascal),
    };

    private static QuantityUnit Press(string symbol, PressureUnit unit, params string[] spellings) => new(symbol, v => Pressure.From(v, unit).Pascals, si => Pressure.FromPascals(si).As(unit), spellings);

    private static QuantityUnit Mass(string symbol, MassFlowUnit unit, params string[] spellings) => new(symbol, v => MassFlow.From(v, unit).KilogramsPerSecond, si => MassFlow.FromKilogramsPerSecond(si).As(unit), spellings);

    private static QuantityUnit Line(string symbol, LengthUnit unit, params string[] spellings) => new(symbol, v => Length.From(v, unit).Meters, si => Length.FromMeters(si).As(unit), spellings);

    private static QuantityUnit Space(string symbol, VolumeUnit unit, params string[] spellings) => new(symbol, v => Volume.From(v, unit).CubicMeters, si => Volume.FromCubicMeters(si).As(unit), spellings);

    private static QuantityUnit Stream(string symbol, VolumeFlowUnit unit, params string[] spellings) => new(symbol, v => VolumeFlow.From(v, unit).CubicMetersPerSecond, si => VolumeFlow.FromCubicMetersPerSecond(si).As(unit), spellings);

    private static QuantityUnit Heat(string symbol, TemperatureUnit unit, params string[] spellings) => new(symbol, v => Temperature.From(v, unit).Kelvins, si => Temperature.FromKelvins(si).As(unit), spellings);

    private static QuantityUnit Ohms(string symbol, ElectricResistanceUnit unit, params string[] spellings) => new(symbol, v => ElectricResistance.From(v, unit).Ohms, si => ElectricResistance.FromOhms(si).As(unit), spellings);

    private static QuantityUnit Volts(string symbol, ElectricPotentialUnit unit, params string[] spellings) => new(symbol, v => ElectricPotential.From(v, unit).Volts, si => ElectricPotential.FromVolts(si).As(unit), spellings);

    private static QuantityUnit Time(string symbol, DurationUnit unit, params string[] spellings) => new(symbol, v => Duration.From(v, unit).Seconds, si => Duration.FromSeconds(si).As(unit), spellings);

    private static QuantityUnit Weight(string symbol, MassUnit unit, params string[] spellings) => new(symbol, v => UnitsNet.Mass.From(v, unit).Kilograms, si => UnitsNet.Mass.FromKilograms(si).As(unit), spellings);

    private static QuantityUnit Pull(string symbol, ForceUnit unit, params string[] spellings) => new(symbol, v => Force.From(v, unit).Newtons, si => Force.FromNewtons(si).As(unit), spellings);

    private static QuantityUnit Twist(string symbol, TorqueUnit unit, params string[] spellings) => new(symbol, v => Torque.From(v, unit).NewtonMeters, si => Torque.FromNewtonMeters(si).As(unit), spellings);

    private static QuantityUnit Arc(string symbol, AngleUnit unit, params string[] spellings) => new(symbol, v => Angle.From(v, unit).Radians, si => Angle.FromRadians(si).As(unit), spellings);

    private static QuantityUnit Spin(string symbol, RotationalSpeedUnit unit, params string[] spellings) => new(symbol, v => RotationalSpeed.From(v, unit).RadiansPerSecond, si => RotationalSpeed.FromRadiansPerSecond(si).As(unit), spellings);

    private static QuantityUnit Part(string symbol, RatioUnit unit, params string[] spellings) => new(symbol, v => Ratio.From(v, unit).DecimalFractions, si => Ratio.FromDecimalFractions(si).As(unit), spellings);

    private static QuantityUnit Plain(string symbol, params string[] spellings) => new(symbol, v => v, si => si, spellings);
}
