namespace Tickover.Physics.Supply;

/// <summary>Whether a filter keeps back what would stop the smallest jet.</summary>
public static class FilterFineness
{
    /// <summary>Part of the smallest bore a particle may have for certain passing: a rule of engineering, no published limit.</summary>
    public const double SafeShare = 0.1;

    /// <summary>Part of a bore from which a few particles can bridge it: a rule of engineering.</summary>
    public const double BridgingShare = 1.0 / 3;

    /// <summary>Coarsest filter for a bore, m.</summary>
    /// <param name="smallestBoreMetres">Smallest jet or bleed, m; above zero.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bore is not above zero.</exception>
    public static double CoarsestFor(double smallestBoreMetres) => SafeShare * Precondition.Positive(smallestBoreMetres); // supply (32)

    /// <summary>Part of the particles kept back by a filter of a beta ratio, 1.</summary>
    /// <param name="beta">Particles before over particles behind, 1; from 1 on.</param>
    /// <returns>1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio below one.</exception>
    public static double Efficiency(double beta) => 1 - 1 / Precondition.Within(beta, 1, double.MaxValue); // supply (32)
}
