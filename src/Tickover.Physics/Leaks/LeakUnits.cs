namespace Tickover.Physics.Leaks;

/// <summary>Units leak rates are quoted in, each in Pa m³/s.</summary>
public static class LeakUnits
{
    /// <summary>One mbar l/s.</summary>
    public const double MillibarLitrePerSecond = 0.1;

    /// <summary>One standard cubic centimetre a minute: of gas at 0 °C and 101,325 Pa.</summary>
    public const double StandardCubicCentimetrePerMinute = 101_325.0 * 1e-6 / 60;
}
