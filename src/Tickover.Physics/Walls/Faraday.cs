namespace Tickover.Physics.Walls;

/// <summary>Metal lost to a current. docs/physics/walls.md (1) to (4).</summary>
public static class Faraday
{
    /// <summary>How fast a wall thins under an even current.</summary>
    /// <param name="currentDensityAmperesPerSquareMetre">Current leaving the metal, A/m²; not negative. 1 µA/cm² is 0.01 A/m².</param>
    /// <param name="equivalentWeightKilogramsPerMole">Equivalent weight, kg/mol of electrons; above zero.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density, kg/m³; above zero.</param>
    /// <returns>m/s.</returns>
    public static double PenetrationRate(double currentDensityAmperesPerSquareMetre, double equivalentWeightKilogramsPerMole, double densityKilogramsPerCubicMetre) =>
        Precondition.NotNegative(currentDensityAmperesPerSquareMetre) * Precondition.Positive(equivalentWeightKilogramsPerMole)
        / (WallsConstants.FaradayCoulombsPerMole * Precondition.Positive(densityKilogramsPerCubicMetre)); // walls (2)

    /// <summary>Metal eaten from an area over a time.</summary>
    /// <param name="currentDensityAmperesPerSquareMetre">Current leaving the metal, A/m²; not negative.</param>
    /// <param name="seconds">How long, s; not negative.</param>
    /// <param name="equivalentWeightKilogramsPerMole">Equivalent weight, kg/mol of electrons; above zero.</param>
    /// <returns>kg/m².</returns>
    public static double MassLoss(double currentDensityAmperesPerSquareMetre, double seconds, double equivalentWeightKilogramsPerMole) =>
        Precondition.NotNegative(currentDensityAmperesPerSquareMetre) * Precondition.NotNegative(seconds)
        * Precondition.Positive(equivalentWeightKilogramsPerMole) / WallsConstants.FaradayCoulombsPerMole; // walls (1)

    /// <summary>Mean rate from a weighed loss, as of a coupon.</summary>
    /// <param name="massKilograms">Loss, kg; not negative.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density, kg/m³; above zero.</param>
    /// <param name="areaSquareMetres">Area that lost it, m²; above zero.</param>
    /// <param name="seconds">Time, s; above zero.</param>
    /// <returns>m/s.</returns>
    public static double RateFromMass(double massKilograms, double densityKilogramsPerCubicMetre, double areaSquareMetres, double seconds) =>
        Precondition.NotNegative(massKilograms)
        / (Precondition.Positive(densityKilogramsPerCubicMetre) * Precondition.Positive(areaSquareMetres) * Precondition.Positive(seconds)); // walls (3)

    /// <summary>The most current that oxygen can carry off through still water of a thickness.</summary>
    /// <param name="waterMetres">Still layer between the air and the metal, m; above zero. In quiet water it is some 0.5 mm, thinner in a damp film.</param>
    /// <returns>A/m².</returns>
    public static double OxygenLimit(double waterMetres) =>
        WallsConstants.OxygenElectrons * WallsConstants.FaradayCoulombsPerMole * WallsConstants.OxygenDiffusivitySquareMetresPerSecond
        * WallsConstants.DissolvedOxygenMolesPerCubicMetre / Precondition.Positive(waterMetres); // walls (4)
}
