namespace Tickover.Workshop.Calibration;

/// <summary>The normal distribution, as far as bands and risks need it.</summary>
public static class Normal
{
    /// <summary>Deviations to either side that hold 90 %.</summary>
    public const double Ninety = 1.6448536269514722;

    /// <summary>Density at a deviation.</summary>
    /// <param name="z">Deviations from the mean, 1.</param>
    /// <returns>The density, 1.</returns>
    public static double Density(double z) => Math.Exp(-0.5 * z * z) * 0.3989422804014327;

    /// <summary>Part below a deviation (Abramowitz and Stegun 1964, 26.2.17: within 7.5e-8).</summary>
    /// <param name="z">Deviations from the mean, 1.</param>
    /// <returns>0 to 1.</returns>
    public static double Below(double z)
    {
        var t = 1 / (1 + 0.2316419 * Math.Abs(z));
        var tail = Density(z) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }
}
