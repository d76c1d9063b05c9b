namespace Tickover.Workshop.Visits.Measures;

/// <summary>What kind of thing a measure is; it decides which units are read and how a value is shown.</summary>
public enum Quantity
{
    /// <summary>Mass flow of air, kg/h or lb/h; kg/s in SI.</summary>
    Airflow,

    /// <summary>A gauge pressure above the air's, bar or psi; Pa in SI.</summary>
    Pressure,

    /// <summary>The pressure of the outside air, hPa or inHg; Pa in SI.</summary>
    AirPressure,

    /// <summary>How far a pressure lies below the outside air's, kPa or inHg; Pa in SI, positive.</summary>
    Depression,

    /// <summary>A length, mm or in, m or ft; m in SI.</summary>
    Length,

    /// <summary>A way driven, km or miles; m in SI.</summary>
    Distance,

    /// <summary>A volume, L or gal, cm³ or fl oz; m³ in SI.</summary>
    Volume,

    /// <summary>A volume in a time, L/h or gal/h, cm³/min; m³/s in SI.</summary>
    VolumeFlow,

    /// <summary>A temperature, °C or °F; K in SI.</summary>
    Temperature,

    /// <summary>An electrical resistance; Ω in SI.</summary>
    Resistance,

    /// <summary>A voltage; V in SI.</summary>
    Voltage,

    /// <summary>A time; s in SI.</summary>
    Duration,

    /// <summary>A mass, g or oz; kg in SI.</summary>
    Mass,

    /// <summary>A pull, N or lbf; N in SI.</summary>
    Force,

    /// <summary>A tightening torque, N m or lbf ft; N m in SI.</summary>
    Torque,

    /// <summary>An angle in degrees; rad in SI.</summary>
    Angle,

    /// <summary>A speed of the engine in rpm; rad/s in SI.</summary>
    EngineSpeed,

    /// <summary>A part of a whole in %; a part of one in SI.</summary>
    Percent,

    /// <summary>Air actually there over air needed; a plain number.</summary>
    Lambda,

    /// <summary>A share of the exhaust gas by volume in %; a part of one in SI.</summary>
    GasPercent,

    /// <summary>A share by volume in ppm; a part of one in SI.</summary>
    PartsPerMillion,

    /// <summary>Turns of a screw, in eighths; a plain number.</summary>
    Turns,

    /// <summary>The bore of a jet as the trade numbers it, in 1/100 mm; m in SI.</summary>
    JetNumber,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A needle's place on the scale, E to F; 0 to 1 in SI.</summary>
    GaugeScale,

    /// <summary>Words as typed.</summary>
    Words,

    /// <summary>One of a few words.</summary>
    Choice,
}
