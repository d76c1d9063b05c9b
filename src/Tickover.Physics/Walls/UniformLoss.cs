namespace Tickover.Physics.Walls;

/// <summary>Even thinning of a wall.</summary>
/// <param name="LossMetres">Mean loss against the sheet as new, m; below zero where the sheet was thicker than its name.</param>
/// <param name="RateMetresPerYear">Mean rate over its age, m/year.</param>
/// <param name="PittingFactor">Deepest loss over mean loss, 1; null where the mean is not above zero. Near 1: even thinning; large: pits.</param>
public readonly record struct UniformLoss(double LossMetres, double RateMetresPerYear, double? PittingFactor)
{
    /// <summary>From losses read on the wall.</summary>
    /// <param name="lossesMetres">Losses, m; one and more.</param>
    /// <param name="ageYears">Age, years; above zero.</param>
    /// <returns>Mean, rate and pitting factor (ASTM G46, 6.3, from memory).</returns>
    public static UniformLoss Of(IReadOnlyList<double> lossesMetres, double ageYears)
    {
        ArgumentNullException.ThrowIfNull(lossesMetres);
        Precondition.Positive(lossesMetres.Count);
        var mean = lossesMetres.Average();
        return new UniformLoss(mean, mean / Precondition.Positive(ageYears), mean > 0 ? lossesMetres.Max() / mean : null); // walls (22)
    }
}
