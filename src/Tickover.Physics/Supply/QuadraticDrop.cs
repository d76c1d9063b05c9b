namespace Tickover.Physics.Supply;

/// <summary>The square law of fittings and orifices with a slope left at no flow.</summary>
internal static class QuadraticDrop
{
    /// <summary>Flow under which the square goes over into a straight line, m³/s: 0.05 l/h, a thirtieth of what an engine idles on.</summary>
    public const double StraightUnder = 1.4e-8;

    /// <summary>c Q|Q| with a slope of c <see cref="StraightUnder"/> at zero, in the unit of c times m⁶/s².</summary>
    /// <param name="coefficient">c; not negative.</param>
    /// <param name="volumeFlow">Flow, m³/s.</param>
    /// <returns>Antisymmetric and rising.</returns>
    public static double Of(double coefficient, double volumeFlow) =>
        coefficient * volumeFlow * Math.Sqrt(volumeFlow * volumeFlow + StraightUnder * StraightUnder); // supply (5)

    /// <summary>Half the density over the square of an area: the coefficient of one velocity head, Pa s²/m⁶.</summary>
    /// <param name="area">Area, m²; above zero.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <returns>Pa s²/m⁶.</returns>
    public static double VelocityHead(double area, double density) => density / (2 * area * area);
}
