namespace Tickover.Physics.Flow;

/// <summary>Air to the throat of a choke: from speed to pressure, and from flow to pressure.</summary>
/// <remarks>
/// V. Ganesan, Internal Combustion Engines, ch. 8; H. N. Gupta, Fundamentals of Internal Combustion Engines, 2006, ch. 9;
/// R. K. Rajput, 2007, ch. 11. The velocity coefficient Cv is the real over the loss-free throat speed.
/// </remarks>
public static class Venturi
{
    private const int MaximumIterations = 100;

    /// <summary>Throat static pressure for a throat speed, Pa.</summary>
    /// <param name="upstream">State of the air at rest before the choke.</param>
    /// <param name="speedMetresPerSecond">Real throat speed, m/s; not negative.</param>
    /// <param name="velocityCoefficient">Real over loss-free speed, 1; above zero to 1.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>Pa; zero where the speed is beyond what expansion into a vacuum gives.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is not above zero.</exception>
    public static double ThroatPressure(GasState upstream, double speedMetresPerSecond, double velocityCoefficient, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var ideal = speedMetresPerSecond / Precondition.Positive(velocityCoefficient);
        var coldness = 1 - ideal * ideal / (2 * gas.SpecificHeatAtConstantPressure * upstream.TemperatureKelvin);
        return upstream.PressurePascals * Math.Pow(Math.Max(0, coldness), gas.SpecificHeatRatio / (gas.SpecificHeatRatio - 1)); // flow (23)
    }

    /// <summary>Real throat speed for a throat pressure, m/s.</summary>
    /// <param name="upstream">State of the air at rest before the choke.</param>
    /// <param name="throatPressurePascals">Throat static pressure, Pa; zero from the upstream pressure on.</param>
    /// <param name="velocityCoefficient">Real over loss-free speed, 1; above zero to 1.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>m/s.</returns>
    public static double ThroatSpeed(GasState upstream, double throatPressurePascals, double velocityCoefficient, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var ratio = Math.Clamp(throatPressurePascals / upstream.PressurePascals, 0, 1);
        var coldness = 1 - Math.Pow(ratio, (gas.SpecificHeatRatio - 1) / gas.SpecificHeatRatio);
        return velocityCoefficient * Math.Sqrt(2 * gas.SpecificHeatAtConstantPressure * upstream.TemperatureKelvin * coldness); // flow (23) inverted
    }

    /// <summary>Throat density, kg/m³.</summary>
    /// <param name="upstream">State of the air at rest before the choke.</param>
    /// <param name="throatPressurePascals">Throat static pressure, Pa.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>kg/m³.</returns>
    public static double ThroatDensity(GasState upstream, double throatPressurePascals, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        return gas.Density(upstream) * Math.Pow(throatPressurePascals / upstream.PressurePascals, 1 / gas.SpecificHeatRatio); // flow (24)
    }

    /// <summary>Throat area that passes a flow at a throat speed, m².</summary>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, kg/s.</param>
    /// <param name="throatDensity">Throat density, kg/m³; above zero.</param>
    /// <param name="speedMetresPerSecond">Throat speed, m/s; above zero.</param>
    /// <param name="areaCoefficient">Part of the area the stream fills, 1; above zero to 1.</param>
    /// <returns>m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Density, speed or coefficient not above zero.</exception>
    public static double ThroatArea(double massFlowKilogramsPerSecond, double throatDensity, double speedMetresPerSecond, double areaCoefficient = 1) =>
        massFlowKilogramsPerSecond / (Precondition.Positive(throatDensity) * Precondition.Positive(speedMetresPerSecond) * Precondition.Positive(areaCoefficient)); // flow (25)

    /// <summary>Throat static pressure for a mass flow: <see cref="CompressibleOrifice"/> turned round.</summary>
    /// <param name="upstream">Total state before the choke.</param>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, kg/s; not negative.</param>
    /// <param name="effectiveAreaSquareMetres">Area times discharge coefficient, m²; above zero.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>The pressure, or that the throat cannot pass so much.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative flow, or an area, pressure or temperature not above zero.</exception>
    public static VenturiPoint PressureFromFlow(GasState upstream, double massFlowKilogramsPerSecond, double effectiveAreaSquareMetres, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var gamma = gas.SpecificHeatRatio;
        var scale = Precondition.Positive(effectiveAreaSquareMetres) * Precondition.Positive(upstream.PressurePascals)
            / Math.Sqrt(gas.GasConstant * Precondition.Positive(upstream.TemperatureKelvin));
        var psi = Precondition.NotNegative(massFlowKilogramsPerSecond) / scale;
        if (psi >= IsentropicFlow.ChokedPsi(gamma))
        {
            return new VenturiPoint(upstream.PressurePascals * IsentropicFlow.CriticalPressureRatio(gamma), true, psi > IsentropicFlow.ChokedPsi(gamma), 0);
        }

        var (temperatureRatio, iterations) = SubsonicTemperatureRatio(psi * psi * (gamma - 1) / (2 * gamma), 2 / (gamma - 1));
        return new VenturiPoint(upstream.PressurePascals * Math.Pow(temperatureRatio, gamma / (gamma - 1)), false, false, iterations);
    }

    // With s = r^((γ-1)/γ), Ψ² (γ-1)/(2γ) is s^n (1 - s), n = 2/(γ-1): falling and concave between the sonic throat and rest.
    // Newton's rule from s = 1 therefore comes down on the root from one side and never leaves the bracket.
    private static (double TemperatureRatio, int Iterations) SubsonicTemperatureRatio(double target, double n)
    {
        const double tolerance = 1e-15;
        var s = 1.0;
        for (var iteration = 1; iteration <= MaximumIterations; iteration++)
        {
            var power = Math.Pow(s, n - 1);
            var step = (power * s * (1 - s) - target) / (power * (n - (n + 1) * s)); // flow (26)
            s -= step;
            if (Math.Abs(step) <= tolerance)
            {
                return (s, iteration);
            }
        }

        return (s, MaximumIterations);
    }
}
