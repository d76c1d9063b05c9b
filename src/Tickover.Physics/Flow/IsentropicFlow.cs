namespace Tickover.Physics.Flow;

/// <summary>Frictionless, adiabatic flow of a gas from rest: ratios along it and the flow functions Ψ and Φ.</summary>
/// <remarks>
/// A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, 1953, ch. 4 (from memory);
/// Y. Çengel and M. Boles, Thermodynamics, 5th ed. 2006, ch. 17. The ratio of specific heats is a number above one.
/// </remarks>
public static class IsentropicFlow
{
    /// <summary>Throat over total pressure at which the throat is sonic, 1.</summary>
    /// <param name="gamma">Ratio of the specific heats, 1; above one.</param>
    /// <returns>1; 0.528282 for 1.4.</returns>
    public static double CriticalPressureRatio(double gamma) => Math.Pow(2 / (gamma + 1), gamma / (gamma - 1)); // flow (2)

    /// <summary>The largest value of Ψ, reached with a sonic throat, 1.</summary>
    /// <param name="gamma">Ratio of the specific heats, 1; above one.</param>
    /// <returns>1; 0.684731 for 1.4.</returns>
    public static double ChokedPsi(double gamma) => Math.Sqrt(gamma) * Math.Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1))); // flow (4)

    /// <summary>Mass flux over p0/√(R T0), 1.</summary>
    /// <param name="ratio">Throat static over upstream total pressure, 1; below the critical ratio the flow is choked, from one on it is zero.</param>
    /// <param name="gamma">Ratio of the specific heats, 1; above one.</param>
    /// <returns>1; 0 to <see cref="ChokedPsi"/>.</returns>
    public static double Psi(double ratio, double gamma)
    {
        if (ratio >= 1)
        {
            return 0;
        }

        return ratio <= CriticalPressureRatio(gamma) ? ChokedPsi(gamma) : Math.Sqrt(2 * (1 - ratio)) * SubsonicPhi(ratio, gamma); // flow (3)
    }

    /// <summary>Compressible over incompressible mass flow at the same pressure drop and upstream density, 1.</summary>
    /// <param name="ratio">Throat static over upstream total pressure, 1; one at and above 1.</param>
    /// <param name="gamma">Ratio of the specific heats, 1; above one.</param>
    /// <returns>1; one at no drop, falling as the throat gets faster.</returns>
    public static double Phi(double ratio, double gamma)
    {
        if (ratio >= 1)
        {
            return 1;
        }

        return ratio <= CriticalPressureRatio(gamma) ? ChokedPsi(gamma) / Math.Sqrt(2 * (1 - ratio)) : SubsonicPhi(ratio, gamma); // flow (5)
    }

    /// <summary>Static over total temperature, 1.</summary>
    /// <param name="mach">Mach number, 1; not negative.</param>
    /// <param name="gamma">Ratio of the specific heats, 1.</param>
    /// <returns>1.</returns>
    public static double TemperatureRatio(double mach, double gamma) => 1 / (1 + (gamma - 1) / 2 * mach * mach); // flow (6)

    /// <summary>Static over total pressure, 1.</summary>
    /// <param name="mach">Mach number, 1; not negative.</param>
    /// <param name="gamma">Ratio of the specific heats, 1.</param>
    /// <returns>1.</returns>
    public static double PressureRatio(double mach, double gamma) => Math.Pow(TemperatureRatio(mach, gamma), gamma / (gamma - 1)); // flow (6)

    /// <summary>Static over total density, 1.</summary>
    /// <param name="mach">Mach number, 1; not negative.</param>
    /// <param name="gamma">Ratio of the specific heats, 1.</param>
    /// <returns>1.</returns>
    public static double DensityRatio(double mach, double gamma) => Math.Pow(TemperatureRatio(mach, gamma), 1 / (gamma - 1)); // flow (6)

    /// <summary>Area over the area of a sonic throat that passes the same flow, 1.</summary>
    /// <param name="mach">Mach number, 1; above zero.</param>
    /// <param name="gamma">Ratio of the specific heats, 1.</param>
    /// <returns>1; not below one.</returns>
    public static double AreaRatio(double mach, double gamma) =>
        Math.Pow(2 / (gamma + 1) / TemperatureRatio(mach, gamma), (gamma + 1) / (2 * (gamma - 1))) / mach; // flow (7)

    /// <summary>State the gas would have if brought to rest without loss.</summary>
    /// <param name="state">Static pressure and temperature.</param>
    /// <param name="velocityMetresPerSecond">Velocity, m/s.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>Total pressure and temperature.</returns>
    public static GasState Total(GasState state, double velocityMetresPerSecond, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var gamma = gas.SpecificHeatRatio;
        var t0 = state.TemperatureKelvin + velocityMetresPerSecond * velocityMetresPerSecond / (2 * gas.SpecificHeatAtConstantPressure); // flow (8)
        return new GasState(state.PressurePascals * Math.Pow(t0 / state.TemperatureKelvin, gamma / (gamma - 1)), t0);
    }

    /// <summary>Mass flow per area of a sonic throat without loss, kg/(s m²).</summary>
    /// <param name="total">Total pressure and temperature upstream.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>kg/(s m²).</returns>
    public static double ChokedMassFlux(GasState total, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        return total.PressurePascals / Math.Sqrt(gas.GasConstant * total.TemperatureKelvin) * ChokedPsi(gas.SpecificHeatRatio); // flow (4)
    }

    // Written with expm1 because r^(2/γ) - r^((γ+1)/γ) loses all its digits as r nears one.
    private static double SubsonicPhi(double r, double gamma)
    {
        var exponent = (gamma - 1) / gamma;
        var logarithm = Math.Log(r);
        var oneMinusPower = -ExpMinusOne(exponent * logarithm);
        return Math.Sqrt(Math.Exp(2 / gamma * logarithm) * oneMinusPower / (exponent * (1 - r))); // flow (5)
    }

    // .NET has no expm1: 2 sinh(x/2) exp(x/2) keeps the digits for small x.
    private static double ExpMinusOne(double x) => 2 * Math.Sinh(x / 2) * Math.Exp(x / 2);
}
