namespace Tickover.Physics.Air;

/// <summary>Density of moist air by the CIPM-2007 equation.</summary>
/// <remarks>
/// A. Picard, R. S. Davis, M. Gläser, K. Fujii, "Revised formula for the density of moist air (CIPM-2007)", Metrologia 45 (2008) 149-155,
/// with carbon dioxide at 400 µmol/mol. Stated for 600 to 1100 hPa and 15 to 27 °C, where its own uncertainty is 2.2e-5;
/// outside it stays usable for an engine, without that uncertainty. Vapour is over liquid water, also below freezing.
/// </remarks>
public static class MoistAir
{
    private const double MolarGasConstant = 8.314472; // J/(mol K), CODATA 2006 as in the paper
    private const double DryAirMolarMass = 28.96546e-3; // kg/mol, at 400 µmol/mol of carbon dioxide
    private const double WaterMolarMass = 18.01528e-3; // kg/mol

    /// <summary>The air of the day.</summary>
    /// <param name="pressurePascals">Absolute pressure at the place (not reduced to sea level), Pa; stated range 60 000 to 110 000.</param>
    /// <param name="temperatureKelvin">Temperature, K; stated range 288.15 to 300.15.</param>
    /// <param name="relativeHumidity">Relative humidity as a fraction, 0 to 1.</param>
    /// <returns>The state of the air; ask <see cref="ValidityAt"/> what it is worth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not finite, pressure or temperature not above zero, or the humidity not within 0 to 1.</exception>
    public static AmbientAir At(double pressurePascals, double temperatureKelvin, double relativeHumidity)
    {
        var p = Precondition.Positive(pressurePascals);
        var t = Precondition.Positive(temperatureKelvin);
        var xv = VapourMoleFraction(p, t, Precondition.Within(relativeHumidity, 0, 1));
        var z = Compressibility(p, t, xv);

        return new AmbientAir
        {
            PressurePascals = p,
            TemperatureKelvin = t,
            DensityKilogramsPerCubicMetre = p * DryAirMolarMass / (z * MolarGasConstant * t) * (1 - xv * (1 - WaterMolarMass / DryAirMolarMass)), // air (5)
            DryAirFraction = (1 - xv) * DryAirMolarMass / ((1 - xv) * DryAirMolarMass + xv * WaterMolarMass), // air (9)
        };
    }

    /// <summary>Whether a state lies in the stated range of the equation.</summary>
    /// <param name="pressurePascals">Absolute pressure, Pa.</param>
    /// <param name="temperatureKelvin">Temperature, K.</param>
    /// <param name="relativeHumidity">Relative humidity, 0 to 1.</param>
    /// <returns>Inside; extrapolated for weather the workshop meets (30 to 120 kPa, -40 to 60 °C); else outside.</returns>
    public static Validity ValidityAt(double pressurePascals, double temperatureKelvin, double relativeHumidity) =>
        Validity.Of("pressure, Pa", pressurePascals, (60_000, 110_000), (30_000, 120_000))
            .And(Validity.Of("temperature, K", temperatureKelvin, (288.15, 300.15), (233.15, 333.15)))
            .And(Validity.Of("relative humidity, 1", relativeHumidity, (0, 1)));

    /// <summary>Saturation pressure of water vapour over liquid water, Pa.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>Pa.</returns>
    public static double SaturationPressurePascals(double temperatureKelvin)
    {
        const double a = 1.2378847e-5; // 1/K²
        const double b = -1.9121316e-2; // 1/K
        const double c = 33.93711047;
        const double d = -6.3431645e3; // K
        var t = temperatureKelvin;
        return Math.Exp(a * t * t + b * t + c + d / t); // air (6)
    }

    /// <summary>Enhancement factor: how much more vapour air holds than empty space does, 1.</summary>
    /// <param name="pressurePascals">Absolute pressure, Pa.</param>
    /// <param name="temperatureKelvin">Temperature, K.</param>
    /// <returns>1.</returns>
    public static double EnhancementFactor(double pressurePascals, double temperatureKelvin)
    {
        const double alpha = 1.00062;
        const double beta = 3.14e-8; // 1/Pa
        const double gamma = 5.6e-7; // 1/K²
        var celsius = temperatureKelvin - AirConstants.IcePointKelvin;
        return alpha + beta * pressurePascals + gamma * celsius * celsius; // air (7)
    }

    /// <summary>Mole fraction of water vapour, 1.</summary>
    /// <param name="pressurePascals">Absolute pressure, Pa; above zero.</param>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <param name="relativeHumidity">Relative humidity, 0 to 1.</param>
    /// <returns>1; above one only where the vapour alone would exceed the pressure, which is outside the range.</returns>
    public static double VapourMoleFraction(double pressurePascals, double temperatureKelvin, double relativeHumidity) =>
        relativeHumidity * EnhancementFactor(pressurePascals, temperatureKelvin)
            * SaturationPressurePascals(temperatureKelvin) / pressurePascals; // air (7)

    /// <summary>Compressibility factor of moist air, 1.</summary>
    /// <param name="pressurePascals">Absolute pressure, Pa.</param>
    /// <param name="temperatureKelvin">Temperature, K.</param>
    /// <param name="vapourMoleFraction">Mole fraction of water vapour, 1.</param>
    /// <returns>1; within 0.001 of one in the stated range.</returns>
    public static double Compressibility(double pressurePascals, double temperatureKelvin, double vapourMoleFraction)
    {
        const double a0 = 1.58123e-6; // K/Pa
        const double a1 = -2.9331e-8; // 1/Pa
        const double a2 = 1.1043e-10; // 1/(K Pa)
        const double b0 = 5.707e-6; // K/Pa
        const double b1 = -2.051e-8; // 1/Pa
        const double c0 = 1.9898e-4; // K/Pa
        const double c1 = -2.376e-6; // 1/Pa
        const double d = 1.83e-11; // K²/Pa²
        const double e = -0.765e-8; // K²/Pa²
        var t = temperatureKelvin - AirConstants.IcePointKelvin;
        var xv = vapourMoleFraction;
        var pOverT = pressurePascals / temperatureKelvin;

        return 1 - pOverT * (a0 + a1 * t + a2 * t * t + (b0 + b1 * t) * xv + (c0 + c1 * t) * xv * xv)
            + pOverT * pOverT * (d + e * xv * xv); // air (8)
    }
}
