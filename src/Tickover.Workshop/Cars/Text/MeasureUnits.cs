using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Tickover.Workshop.Cars.Text;

/// <summary>The units in which a measure is read and shown.</summary>
/// <remarks>UnitsNet parses and converts; this says which of its units a workshop means.</remarks>
internal sealed class MeasureUnits
{
    private static readonly Dictionary<Measure, MeasureUnits> Table = new()
    {
        [Measure.Length] = new(LengthUnit.Meter, [LengthUnit.Millimeter, LengthUnit.Centimeter, LengthUnit.Meter, LengthUnit.Inch], "mm, cm, m or in"),
        [Measure.JetBore] = new(LengthUnit.Meter, [LengthUnit.Millimeter, LengthUnit.Inch], "mm or in, or the bare number in 1/100 mm"),
        [Measure.Volume] = new(VolumeUnit.CubicMeter, [VolumeUnit.CubicCentimeter, VolumeUnit.Milliliter, VolumeUnit.Liter, VolumeUnit.CubicInch], "cm³, ml, l or in³"),
        [Measure.Angle] = new(AngleUnit.Radian, [AngleUnit.Degree, AngleUnit.Radian], "° (or deg), or rad"),
        [Measure.Speed] = new(RotationalSpeedUnit.RadianPerSecond, [RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond], "rpm or rad/s"),
        [Measure.Pressure] = new(PressureUnit.Pascal, [PressureUnit.Pascal, PressureUnit.Hectopascal, PressureUnit.Millibar, PressureUnit.Kilopascal, PressureUnit.Bar, PressureUnit.MillimeterOfMercury, PressureUnit.InchOfMercury, PressureUnit.PoundForcePerSquareInch], "Pa, hPa, mbar, kPa, bar, mmHg, inHg or psi"),
        [Measure.Temperature] = new(TemperatureUnit.Kelvin, [TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeFahrenheit, TemperatureUnit.Kelvin], "°C, °F or K"),
        [Measure.Altitude] = new(LengthUnit.Meter, [LengthUnit.Meter, LengthUnit.Kilometer, LengthUnit.Foot], "m, km or ft"),
        [Measure.Percent] = new(RatioUnit.DecimalFraction, [RatioUnit.Percent], "%"),
        [Measure.Area] = new(AreaUnit.SquareMeter, [AreaUnit.SquareMillimeter, AreaUnit.SquareCentimeter, AreaUnit.SquareInch], "mm², cm² or in²"),
        [Measure.Heat] = new(SpecificEnergyUnit.JoulePerKilogram, [SpecificEnergyUnit.MegajoulePerKilogram, SpecificEnergyUnit.KilojoulePerKilogram], "MJ/kg or kJ/kg"),
    };

    // What people write and UnitsNet does not know, or knows as something else ("C" is a coulomb).
    private static readonly Dictionary<string, string> Spellings = new (string Typed, string Unit)[]
    {
        ("inch", "in"), ("inches", "in"), ("\"", "in"), ("″", "in"), ("cc", "cm³"), ("ccm", "cm³"), ("cm3", "cm³"),
        ("cm^3", "cm³"), ("in3", "in³"), ("cu in", "in³"), ("litre", "l"), ("litres", "l"), ("mm2", "mm²"), ("mm^2", "mm²"),
        ("cm2", "cm²"), ("in2", "in²"), ("degree", "°"), ("degrees", "°"), ("º", "°"), ("C", "°C"), ("degC", "°C"), ("ºC", "°C"),
        ("F", "°F"), ("degF", "°F"), ("ºF", "°F"), ("r/min", "rpm"), ("1/min", "rpm"), ("min-1", "rpm"), ("rev/min", "rpm"),
        ("\" Hg", "inHg"), ("in Hg", "inHg"), ("mm Hg", "mmHg"), ("feet", "ft"), ("metre", "m"), ("metres", "m"),
    }.ToDictionary(s => s.Typed, s => s.Unit, StringComparer.OrdinalIgnoreCase);

    private readonly Enum _si;
    private readonly IReadOnlyList<Enum> _offered;

    private MeasureUnits(Enum si, IReadOnlyList<Enum> offered, string words)
    {
        _si = si;
        _offered = offered;
        Words = words;
    }

    /// <summary>The units as a sentence names them.</summary>
    public string Words { get; }

    /// <summary>The units of a measure, or null where it is a plain number.</summary>
    /// <param name="measure">The measure.</param>
    /// <returns>The units.</returns>
    public static MeasureUnits? Of(Measure measure) => Table.GetValueOrDefault(measure);

    /// <summary>Converts what stands behind a number.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">The unit as typed.</param>
    /// <param name="si">The value in SI.</param>
    /// <returns>Whether the unit is one of this measure.</returns>
    public bool TryToSi(double number, string unit, out double si)
    {
        var spelling = Spellings.GetValueOrDefault(unit, unit);
        si = 0;
        return UnitsNetSetup.Default.UnitParser.TryParse(spelling, _si.GetType(), CultureInfo.InvariantCulture, out var found)
            && _offered.Contains(found)
            && UnitConverter.TryConvert(number, found, _si, out si)
            && double.IsFinite(si);
    }

    /// <summary>The value in one of the offered units.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="unit">Index into the offered units; 0 is the one usually shown.</param>
    /// <returns>The number in that unit.</returns>
    public double FromSi(double si, int unit) => UnitConverter.Convert(si, _si, _offered[unit]);
}
