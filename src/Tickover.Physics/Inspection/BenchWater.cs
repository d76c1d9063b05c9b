using Tickover.Physics.Fuels;

namespace Tickover.Physics.Inspection;

/// <summary>Water on the flow bench.</summary>
/// <remarks>Density: M. Tanaka et al., Metrologia 38 (2001) 301–309, without dissolved air. Viscosity: the usual engineering formula, within 2.5 % of the tables from 0 to 370 °C (both from memory).</remarks>
public static class BenchWater
{
    private const double Celsius = 273.15;

    /// <summary>Water at a temperature.</summary>
    /// <param name="kelvin">Temperature, K; 273 to 313 for the density stated.</param>
    /// <returns>Density and viscosity; as no fuel it asks for no air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from 270 to 373 K.</exception>
    public static FuelProperties At(double kelvin)
    {
        var t = Precondition.Within(kelvin, 270, 373) - Celsius;
        return new FuelProperties
        {
            DensityKilogramsPerCubicMetre = 999.974950 * (1 - ((t - 3.983035) * (t - 3.983035) * (t + 301.797) / (522528.9 * (t + 69.34881)))), // inspection (6)
            ViscosityPascalSeconds = 2.414e-5 * Math.Pow(10, 247.8 / (kelvin - 140)), // inspection (7)
            StoichiometricRatio = 0,
        };
    }
}
