namespace Tickover.Workshop.Cars;

/// <summary>The kind of quantity of a figure; it decides which units are read and how it is shown.</summary>
public enum Measure
{
    /// <summary>A length shown in mm (or in).</summary>
    Length,

    /// <summary>The bore of a jet: mm, or the trade's number in 1/100 mm ("135" is 1.35 mm).</summary>
    JetBore,

    /// <summary>A volume shown in cm³.</summary>
    Volume,

    /// <summary>An angle shown in degrees.</summary>
    Angle,

    /// <summary>A rotational speed shown in rpm.</summary>
    Speed,

    /// <summary>A pressure or depression shown in Pa, hPa, mbar or kPa.</summary>
    Pressure,

    /// <summary>A temperature shown in °C (or °F), K in SI.</summary>
    Temperature,

    /// <summary>A difference of temperatures, shown in K.</summary>
    TemperatureDifference,

    /// <summary>A height above the sea shown in m (or ft).</summary>
    Altitude,

    /// <summary>Turns of a screw.</summary>
    Turns,

    /// <summary>A plain ratio or coefficient.</summary>
    Ratio,

    /// <summary>A part of one, typed and shown in percent.</summary>
    Percent,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Heat released per kilogram of air, shown in MJ/kg.</summary>
    Heat,

    /// <summary>An area shown in mm².</summary>
    Area,
}
