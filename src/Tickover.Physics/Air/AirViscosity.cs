namespace Tickover.Physics.Air;

/// <summary>Dynamic viscosity of air by Sutherland's formula.</summary>
/// <remarks>U.S. Standard Atmosphere 1976, equation (51). Pressure and humidity hardly matter at an engine. Stated range here 100 to 1500 K.</remarks>
public static class AirViscosity
{
    /// <summary>Dynamic viscosity, Pa s.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>Pa s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above zero.</exception>
    public static double PascalSeconds(double temperatureKelvin)
    {
        const double beta = 1.458e-6; // kg/(s m K^½)
        const double sutherlandKelvin = 110.4;
        var t = Precondition.Positive(temperatureKelvin);
        return beta * t * Math.Sqrt(t) / (t + sutherlandKelvin); // air (10)
    }

    /// <summary>Whether a temperature lies in the range of the formula.</summary>
    /// <param name="temperatureKelvin">Temperature, K.</param>
    /// <returns>Inside or outside.</returns>
    public static Validity ValidityAt(double temperatureKelvin) => Validity.Of("temperature, K", temperatureKelvin, (100, 1500));
}
