namespace Tickover.Physics.Flow;

/// <summary>An opening through which a liquid, or air at a small pressure drop, flows: Bernoulli with a discharge coefficient.</summary>
/// <remarks>R. K. Rajput, A Textbook of Internal Combustion Engines, 2nd ed. 2007, ch. 11. For air below some 2 % pressure drop.</remarks>
public static class IncompressibleOrifice
{
    /// <summary>Pressure drop below which <see cref="MassFlow"/> is smoothed, Pa: a seventh of a millimetre of petrol.</summary>
    public const double SmoothedBelowPascals = 1;

    /// <summary>Mass flow, kg/s; negative for a negative drop.</summary>
    /// <param name="pressureDropPascals">Pressure drop, Pa.</param>
    /// <param name="effectiveAreaSquareMetres">Area times discharge coefficient, m²; not negative.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density, kg/m³; above zero.</param>
    /// <returns>kg/s; antisymmetric, smoothed within <see cref="SmoothedBelowPascals"/>.</returns>
    public static double MassFlow(double pressureDropPascals, double effectiveAreaSquareMetres, double densityKilogramsPerCubicMetre) =>
        effectiveAreaSquareMetres * Math.Sqrt(2 * densityKilogramsPerCubicMetre)
            * SignedRoot.Of(pressureDropPascals, SmoothedBelowPascals); // flow (12)

    /// <summary>Pressure drop that a mass flow needs, Pa; negative for a negative flow.</summary>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, kg/s.</param>
    /// <param name="effectiveAreaSquareMetres">Area times discharge coefficient, m²; above zero.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density, kg/m³; above zero.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Area or density not above zero.</exception>
    public static double PressureDrop(double massFlowKilogramsPerSecond, double effectiveAreaSquareMetres, double densityKilogramsPerCubicMetre)
    {
        var flux = massFlowKilogramsPerSecond / Precondition.Positive(effectiveAreaSquareMetres);
        return flux * Math.Abs(flux) / (2 * Precondition.Positive(densityKilogramsPerCubicMetre)); // flow (12) inverted
    }

    /// <summary>Area times discharge coefficient that passes a mass flow, m².</summary>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, kg/s; not negative.</param>
    /// <param name="pressureDropPascals">Pressure drop, Pa; above zero.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density, kg/m³; above zero.</param>
    /// <returns>m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Drop or density not above zero, or a negative flow.</exception>
    public static double EffectiveArea(double massFlowKilogramsPerSecond, double pressureDropPascals, double densityKilogramsPerCubicMetre) =>
        Precondition.NotNegative(massFlowKilogramsPerSecond)
            / Math.Sqrt(2 * Precondition.Positive(densityKilogramsPerCubicMetre) * Precondition.Positive(pressureDropPascals)); // flow (12) inverted

    /// <summary>Effective area of openings one behind the other, m²; zero if one is shut.</summary>
    /// <param name="effectiveAreasSquareMetres">Area times coefficient of each, m²; not negative, at least one.</param>
    /// <returns>m²; below the smallest of them.</returns>
    /// <exception cref="ArgumentException">No opening given.</exception>
    public static double SeriesArea(params ReadOnlySpan<double> effectiveAreasSquareMetres)
    {
        if (effectiveAreasSquareMetres.IsEmpty)
        {
            throw new ArgumentException("A row of openings needs at least one.", nameof(effectiveAreasSquareMetres));
        }

        var sum = 0.0;
        foreach (var area in effectiveAreasSquareMetres)
        {
            if (Precondition.NotNegative(area) == 0)
            {
                return 0;
            }

            sum += 1 / (area * area); // flow (13)
        }

        return 1 / Math.Sqrt(sum);
    }
}
