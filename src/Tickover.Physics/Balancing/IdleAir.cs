namespace Tickover.Physics.Balancing;

/// <summary>Air a barrel passes at idle, by the swept volume it feeds.</summary>
public static class IdleAir
{
    private const double Density = 1.2;                     // kg/m³ at 1 bar and 20 °C

    /// <summary>Volumetric efficiency at idle, from.</summary>
    public const double LeastFilling = 0.25;

    /// <summary>Volumetric efficiency at idle, to.</summary>
    public const double MostFilling = 0.35;

    /// <summary>The air.</summary>
    /// <param name="sweptCubicMetres">Swept volume fed, m³.</param>
    /// <param name="rpm">Engine speed.</param>
    /// <param name="filling">Volumetric efficiency, 0 to 1.</param>
    /// <returns>kg/s.</returns>
    public static double KilogramsPerSecond(double sweptCubicMetres, double rpm, double filling) => sweptCubicMetres * rpm / 120 * Density * filling; // (14)
}
