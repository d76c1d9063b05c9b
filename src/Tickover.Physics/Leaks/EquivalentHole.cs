namespace Tickover.Physics.Leaks;

/// <summary>The one round hole that would leak as much. docs/physics/leaks.md (9).</summary>
public static class EquivalentHole
{
    /// <summary>Its diameter.</summary>
    /// <param name="leakPascalCubicMetresPerSecond">The leak, Pa m³/s; not negative.</param>
    /// <param name="gaugePascals">Pressure across it, Pa; above zero.</param>
    /// <param name="barometerPascals">Pressure outside, Pa; above zero.</param>
    /// <param name="gasKelvins">Temperature, K; above zero.</param>
    /// <param name="discharge">Discharge coefficient, 1; above zero.</param>
    /// <returns>m. A smaller one hides in the friction of a long pore: real leaks of that rate are wider.</returns>
    public static double Diameter(
        double leakPascalCubicMetresPerSecond, double gaugePascals, double barometerPascals, double gasKelvins, double discharge = LeakConstants.HoleDischarge)
    {
        var gasConstant = LeakConstants.MolarGasConstant / LeakConstants.AirKilogramsPerMole;
        var density = (Precondition.Positive(gaugePascals) + Precondition.Positive(barometerPascals)) / (gasConstant * Precondition.Positive(gasKelvins));
        var massFlow = Precondition.NotNegative(leakPascalCubicMetresPerSecond) / (gasConstant * gasKelvins);
        var area = massFlow / (Precondition.Positive(discharge) * Math.Sqrt(2 * density * gaugePascals)); // leaks (9)
        return Math.Sqrt(4 * area / Math.PI);
    }
}
