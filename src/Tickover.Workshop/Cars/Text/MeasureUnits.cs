using UnitsNet;
using UnitsNet.Units;

namespace Tickover.Workshop.Cars.Text;

/// <summary>The units in which a measure is read and shown.</summary>
/// <remarks>
/// UnitsNet converts. Its own parser of abbreviations is not used: it knows units no workshop means, and loading it takes
/// longer than the rest of the reading (docs/decisions/0010).
/// </remarks>
internal sealed class MeasureUnits
{
    private static readonly Dictionary<Measure, MeasureUnits> Table = new()
    {
        [Measure.Length] = Lengths("mm, cm, m or in", "mm", "cm", "m", "in"),
        [Measure.JetBore] = Lengths("mm or in, or the bare number in 1/100 mm", "mm", "in"),
        [Measure.Altitude] = Lengths("m, km or ft", "m", "km", "ft"),
        [Measure.Volume] = new(
            "cm³, ml, l or in³",
            Of<VolumeUnit>(("cm³", VolumeUnit.CubicCentimeter), ("ml", VolumeUnit.Milliliter), ("l", VolumeUnit.Liter), ("in³", VolumeUnit.CubicInch)),
            (v, u) => Volume.From(v, (VolumeUnit)u).CubicMeters,
            (si, u) => Volume.FromCubicMeters(si).As((VolumeUnit)u)),
        [Measure.Angle] = new(
            "° (or deg), or rad",
            Of<AngleUnit>(("°", AngleUnit.Degree), ("deg", AngleUnit.Degree), ("rad", AngleUnit.Radian)),
            (v, u) => Angle.From(v, (AngleUnit)u).Radians,
            (si, u) => Angle.FromRadians(si).As((AngleUnit)u)),
        [Measure.Speed] = new(
            "rpm or rad/s",
            Of<RotationalSpeedUnit>(("rpm", RotationalSpeedUnit.RevolutionPerMinute), ("rad/s", RotationalSpeedUnit.RadianPerSecond)),
            (v, u) => RotationalSpeed.From(v, (RotationalSpeedUnit)u).RadiansPerSecond,
            (si, u) => RotationalSpeed.FromRadiansPerSecond(si).As((RotationalSpeedUnit)u)),
        [Measure.Pressure] = new(
            "Pa, hPa, mbar, kPa, bar, mmHg, inHg or psi",
            Of<PressureUnit>(
                ("Pa", PressureUnit.Pascal), ("hPa", PressureUnit.Hectopascal), ("mbar", PressureUnit.Millibar), ("kPa", PressureUnit.Kilopascal),
                ("bar", PressureUnit.Bar), ("mmHg", PressureUnit.MillimeterOfMercury), ("inHg", PressureUnit.InchOfMercury), ("psi", PressureUnit.PoundForcePerSquareInch)),
            (v, u) => Pressure.From(v, (PressureUnit)u).Pascals,
            (si, u) => Pressure.FromPascals(si).As((PressureUnit)u)),
        [Measure.Temperature] = new(
            "°C, °F or K",
            Of<TemperatureUnit>(("°C", TemperatureUnit.DegreeCelsius), ("°F", TemperatureUnit.DegreeFahrenheit), ("K", TemperatureUnit.Kelvin)),
            (v, u) => Temperature.From(v, (TemperatureUnit)u).Kelvins,
            (si, u) => Temperature.FromKelvins(si).As((TemperatureUnit)u)),
        [Measure.TemperatureDifference] = new(
            "K",
            Of<TemperatureDeltaUnit>(("K", TemperatureDeltaUnit.Kelvin)),
            (v, u) => TemperatureDelta.From(v, (TemperatureDeltaUnit)u).Kelvins,
            (si, u) => TemperatureDelta.FromKelvins(si).As((TemperatureDeltaUnit)u)),
        [Measure.Percent] = new(
            "%",
            Of<RatioUnit>(("%", RatioUnit.Percent)),
            (v, u) => Ratio.From(v, (RatioUnit)u).DecimalFractions,
            (si, u) => Ratio.FromDecimalFractions(si).As((RatioUnit)u)),
        [Measure.Area] = new(
            "mm², cm² or in²",
            Of<AreaUnit>(("mm²", AreaUnit.SquareMillimeter), ("cm²", AreaUnit.SquareCentimeter), ("in²", AreaUnit.SquareInch)),
            (v, u) => Area.From(v, (AreaUnit)u).SquareMeters,
            (si, u) => Area.FromSquareMeters(si).As((AreaUnit)u)),
        [Measure.Heat] = new(
            "MJ/kg or kJ/kg",
            Of<SpecificEnergyUnit>(("MJ/kg", SpecificEnergyUnit.MegajoulePerKilogram), ("kJ/kg", SpecificEnergyUnit.KilojoulePerKilogram)),
            (v, u) => SpecificEnergy.From(v, (SpecificEnergyUnit)u).JoulesPerKilogram,
            (si, u) => SpecificEnergy.FromJoulesPerKilogram(si).As((SpecificEnergyUnit)u)),
    };

    // Other ways people write the same units.
    private static readonly Dictionary<string, string> Spellings = new (string Typed, string Unit)[]
    {
        ("inch", "in"), ("inches", "in"), ("\"", "in"), ("″", "in"), ("feet", "ft"), ("metre", "m"), ("metres", "m"),
        ("cc", "cm³"), ("ccm", "cm³"), ("cm3", "cm³"), ("cm^3", "cm³"), ("in3", "in³"), ("cu in", "in³"), ("litre", "l"), ("litres", "l"),
        ("mm2", "mm²"), ("mm^2", "mm²"), ("cm2", "cm²"), ("in2", "in²"), ("degree", "°"), ("degrees", "°"), ("º", "°"),
        ("C", "°C"), ("degC", "°C"), ("ºC", "°C"), ("F", "°F"), ("degF", "°F"), ("ºF", "°F"),
        ("r/min", "rpm"), ("1/min", "rpm"), ("min-1", "rpm"), ("rev/min", "rpm"), ("in Hg", "inHg"), ("mm Hg", "mmHg"),
    }.ToDictionary(s => s.Typed, s => s.Unit, StringComparer.OrdinalIgnoreCase);

    private readonly IReadOnlyList<(string Text, Enum Unit)> _offered;
    private readonly Func<double, Enum, double> _toSi;
    private readonly Func<double, Enum, double> _fromSi;

    private MeasureUnits(string words, IReadOnlyList<(string Text, Enum Unit)> offered, Func<double, Enum, double> toSi, Func<double, Enum, double> fromSi)
    {
        Words = words;
        _offered = offered;
        _toSi = toSi;
        _fromSi = fromSi;
    }

    /// <summary>The units as a sentence names them.</summary>
    public string Words { get; }

    /// <summary>The units as they are written, the usual one first.</summary>
    public IEnumerable<string> Written => _offered.Select(o => o.Text);

    /// <summary>The units of a measure, or null where it is a plain number.</summary>
    /// <param name="measure">The measure.</param>
    /// <returns>The units.</returns>
    public static MeasureUnits? Of(Measure measure) => Table.GetValueOrDefault(measure);

    /// <summary>Converts what stands behind a number.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">The unit as typed; capitals and small letters count alike.</param>
    /// <param name="si">The value in SI.</param>
    /// <returns>Whether the unit is one of this measure.</returns>
    public bool TryToSi(double number, string unit, out double si)
    {
        var spelling = Spellings.GetValueOrDefault(unit, unit);
        var found = _offered.FirstOrDefault(o => o.Text.Equals(spelling, StringComparison.OrdinalIgnoreCase)).Unit;
        var converted = found is null ? double.NaN : _toSi(number, found);
        si = double.IsFinite(converted) ? converted : 0;
        return double.IsFinite(converted);
    }

    /// <summary>The value in one of the offered units.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="unit">Index into the offered units; 0 is the one usually shown.</param>
    /// <returns>The number in that unit.</returns>
    public double FromSi(double si, int unit) => _fromSi(si, _offered[unit].Unit);

    private static MeasureUnits Lengths(string words, params string[] offered)
    {
        var all = Of<LengthUnit>(
            ("mm", LengthUnit.Millimeter), ("cm", LengthUnit.Centimeter), ("m", LengthUnit.Meter), ("km", LengthUnit.Kilometer), ("in", LengthUnit.Inch), ("ft", LengthUnit.Foot));
        return new MeasureUnits(
            words,
            [.. offered.Select(text => all.First(o => string.Equals(o.Text, text, StringComparison.Ordinal)))],
            (v, u) => Length.From(v, (LengthUnit)u).Meters,
            (si, u) => Length.FromMeters(si).As((LengthUnit)u));
    }

    private static IReadOnlyList<(string Text, Enum Unit)> Of<TUnit>(params IEnumerable<(string Text, TUnit Unit)> units)
        where TUnit : Enum => [.. units.Select(u => (u.Text, (Enum)u.Unit))];
}
