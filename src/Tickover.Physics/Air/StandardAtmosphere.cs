namespace Tickover.Physics.Air;

/// <summary>The ISO standard atmosphere below the tropopause: dry air, by geopotential altitude.</summary>
/// <remarks>
/// ISO 2533:1975 and the U.S. Standard Atmosphere 1976, which agree here. Stated for geopotential altitudes of -2 to 11 km.
/// Tables by geometric altitude differ (0.6 m at 2 km): convert first. Not the weather of the day: that is <see cref="MoistAir"/>.
/// </remarks>
public static class StandardAtmosphere
{
    /// <summary>Temperature at sea level, K.</summary>
    public const double SeaLevelTemperatureKelvin = 288.15;

    /// <summary>Fall of temperature with geopotential altitude, K/m.</summary>
    public const double LapseRateKelvinPerMetre = 0.0065;

    /// <summary>Nominal radius of the Earth, m.</summary>
    public const double EarthRadiusMetres = 6_356_766.0;

    private const double MinimumAltitudeMetres = -2_000;
    private const double MaximumAltitudeMetres = 11_000;

    // g/(R L) = 5.25588
    private const double PressureExponent = AirConstants.StandardGravityMetresPerSecondSquared
        / (AirConstants.DryAirGasConstant * LapseRateKelvinPerMetre);

    /// <summary>Temperature, K.</summary>
    /// <param name="geopotentialMetres">Geopotential altitude, m; stated range -2000 to 11 000.</param>
    /// <returns>K.</returns>
    public static double TemperatureKelvin(double geopotentialMetres) =>
        SeaLevelTemperatureKelvin - LapseRateKelvinPerMetre * Precondition.Finite(geopotentialMetres); // air (1)

    /// <summary>Absolute pressure, Pa.</summary>
    /// <param name="geopotentialMetres">Geopotential altitude, m; stated range -2000 to 11 000. Zero pressure where the formula's temperature reaches zero.</param>
    /// <returns>Pa.</returns>
    public static double PressurePascals(double geopotentialMetres) =>
        AirConstants.StandardPressurePascals
            * Math.Pow(Math.Max(0, TemperatureKelvin(geopotentialMetres)) / SeaLevelTemperatureKelvin, PressureExponent); // air (2)

    /// <summary>Dry air of the standard atmosphere at an altitude.</summary>
    /// <param name="geopotentialMetres">Geopotential altitude, m; stated range -2000 to 11 000, usable below 40 000.</param>
    /// <returns>The state of the air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is not a number or above 40 000 m, where the formula has no air left.</exception>
    public static AmbientAir At(double geopotentialMetres)
    {
        const double altitudeWithoutAirMetres = 40_000;
        var altitude = Precondition.Within(geopotentialMetres, double.MinValue, altitudeWithoutAirMetres);
        var temperature = TemperatureKelvin(altitude);
        var pressure = PressurePascals(altitude);

        return new AmbientAir
        {
            PressurePascals = pressure,
            TemperatureKelvin = temperature,
            DensityKilogramsPerCubicMetre = pressure / (AirConstants.DryAirGasConstant * temperature), // air (3)
            DryAirFraction = 1,
        };
    }

    /// <summary>Whether an altitude lies in the stated range.</summary>
    /// <param name="geopotentialMetres">Geopotential altitude, m.</param>
    /// <returns>Inside or outside.</returns>
    public static Validity ValidityAt(double geopotentialMetres) =>
        Validity.Of("geopotential altitude, m", geopotentialMetres, (MinimumAltitudeMetres, MaximumAltitudeMetres));

    /// <summary>Geopotential altitude of a height above sea level.</summary>
    /// <param name="geometricMetres">Height above mean sea level, m; above minus the Earth's radius.</param>
    /// <returns>m.</returns>
    public static double GeopotentialFromGeometric(double geometricMetres) =>
        EarthRadiusMetres * geometricMetres / (EarthRadiusMetres + geometricMetres); // air (4)

    /// <summary>Height above sea level of a geopotential altitude.</summary>
    /// <param name="geopotentialMetres">Geopotential altitude, m; below the Earth's radius.</param>
    /// <returns>m.</returns>
    public static double GeometricFromGeopotential(double geopotentialMetres) =>
        EarthRadiusMetres * geopotentialMetres / (EarthRadiusMetres - geopotentialMetres); // air (4) inverted
}
