namespace Tickover.Physics.Air;

/// <summary>Constants of air, each with its source.</summary>
public static class AirConstants
{
    /// <summary>Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901).</summary>
    public const double StandardGravityMetresPerSecondSquared = 9.80665;

    /// <summary>Gas constant of dry air in the standard atmosphere, J/(kg K) (ISO 2533:1975).</summary>
    public const double DryAirGasConstant = 287.05287;

    /// <summary>Ratio of the specific heats of air, 1, as all textbook examples of carburettors use it.</summary>
    public const double SpecificHeatRatio = 1.4;

    /// <summary>Zero of the Celsius scale, K, exact.</summary>
    public const double IcePointKelvin = 273.15;

    /// <summary>Standard atmosphere, Pa, exact.</summary>
    public const double StandardPressurePascals = 101_325.0;
}
