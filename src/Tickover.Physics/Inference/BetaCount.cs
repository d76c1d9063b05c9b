namespace Tickover.Physics.Inference;

/// <summary>A chance learned from cases, as a Beta distribution: what was held before counts as so many cases. docs/physics/inference.md (9).</summary>
/// <remarks>Gelman and others, <i>Bayesian Data Analysis</i>, 2nd edition 2003, section 2.4 (from memory).</remarks>
public static class BetaCount
{
    /// <summary>The chance after cases.</summary>
    /// <param name="prior">Chance held before, 0 to 1.</param>
    /// <param name="worth">How many cases the prior counts for, above zero.</param>
    /// <param name="found">Cases in which it was so.</param>
    /// <param name="cases">Cases in all, no fewer than <paramref name="found"/>.</param>
    /// <returns>Mean of the distribution after them, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of its range.</exception>
    public static double Mean(double prior, double worth, int found, int cases)
    {
        Precondition.Within(prior, 0, 1);
        Precondition.Positive(worth);
        ArgumentOutOfRangeException.ThrowIfNegative(found);
        ArgumentOutOfRangeException.ThrowIfLessThan(cases, found);
        return (prior * worth + found) / (worth + cases); // inference (9)
    }
}
