namespace Tickover.Physics.Flow;

/// <summary>Discharge coefficient of a jet: a drilled bore some diameters long.</summary>
/// <remarks>
/// A. Lichtarowicz, R. K. Duggins and E. Markland, J. Mech. Eng. Sci. 7(2), 1965, 210-219 (formula from memory).
/// Stated for length over diameter 2 to 10 and Reynolds numbers 10 to 20 000 of the mean speed in the bore, without cavitation.
/// Below <see cref="LaminarBelowReynolds"/> a law of our own takes over, see there.
/// </remarks>
public static class JetDischarge
{
    /// <summary>Reynolds number below which the coefficient follows a law with laminar flow as its limit, 1.</summary>
    /// <remarks>
    /// The published formula turned into flow over pressure drop passes nothing at all below a threshold (some 2 Pa for a main jet, 16 Pa for an idle jet)
    /// and jumps there in slope: it cannot be right near zero. The law here meets it at this number in value and slope.
    /// </remarks>
    public const double LaminarBelowReynolds = 100;

    /// <summary>Largest length over diameter for which the formula keeps its meaning at all, 1.</summary>
    public const double LongestLengthRatio = 50;

    /// <summary>Discharge coefficient, 1.</summary>
    /// <param name="reynolds">Reynolds number of the mean speed in the bore, 1; not negative.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1; stated range 2 to 10.</param>
    /// <returns>1; zero at rest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is negative or the length not within 0 to <see cref="LongestLengthRatio"/>.</exception>
    public static double Coefficient(double reynolds, double lengthRatio)
    {
        var re = Precondition.NotNegative(reynolds);
        return re == 0 ? 0 : re / IdealReynolds(re, lengthRatio);
    }

    /// <summary>Reynolds number of the loss-free flow under the same pressure drop, 1: the real one over the discharge coefficient.</summary>
    /// <param name="reynolds">Real Reynolds number, 1; not negative.</param>
    /// <param name="lengthRatio">Length over diameter, 1.</param>
    /// <returns>1; rising with the real one, continuous in value and slope.</returns>
    internal static double IdealReynolds(double reynolds, double lengthRatio)
    {
        var l = Precondition.Within(lengthRatio, 0, LongestLengthRatio);
        if (reynolds >= LaminarBelowReynolds)
        {
            return reynolds * InverseCoefficient(reynolds, l);
        }

        var (linear, quadratic) = LaminarTerms(l);
        return Math.Sqrt(reynolds * (linear + quadratic * reynolds)); // flow (19)
    }

    /// <summary>Real Reynolds number under a pressure drop, below the switch of laws, 1.</summary>
    /// <param name="idealReynolds">Reynolds number of the loss-free flow, 1.</param>
    /// <param name="lengthRatio">Length over diameter, 1.</param>
    /// <returns>1.</returns>
    internal static double LaminarReynolds(double idealReynolds, double lengthRatio)
    {
        var (linear, quadratic) = LaminarTerms(lengthRatio);
        var square = idealReynolds * idealReynolds;
        return 2 * square / (linear + Math.Sqrt(linear * linear + 4 * quadratic * square)); // flow (19) solved, in the form that keeps its digits
    }

    /// <summary>One over the coefficient by the published formula.</summary>
    /// <param name="re">Reynolds number, 1; above zero.</param>
    /// <param name="l">Length over diameter, 1.</param>
    /// <returns>1.</returns>
    internal static double InverseCoefficient(double re, double l) => 1 / Ultimate(l) + FrictionTerm(l) / re - PeakTerm(re, l); // flow (17)

    /// <summary>The term of 1/Cd that falls with the Reynolds number, times that number.</summary>
    /// <param name="l">Length over diameter, 1.</param>
    /// <returns>1.</returns>
    internal static double FrictionTerm(double l) => 20 * (1 + 2.25 * l);

    /// <summary>Coefficient at very high Reynolds number, 1.</summary>
    /// <param name="l">Length over diameter, 1.</param>
    /// <returns>1.</returns>
    internal static double Ultimate(double l) => 0.827 - 0.0085 * l; // flow (18)

    /// <summary>The small term that lifts the coefficient near a Reynolds number of 6700, 1.</summary>
    /// <param name="re">Reynolds number, 1; above zero.</param>
    /// <param name="l">Length over diameter, 1.</param>
    /// <returns>1; at most 0.005 l.</returns>
    internal static double PeakTerm(double re, double l)
    {
        var decades = Math.Log10(0.00015 * re);
        return 0.005 * l / (1 + 7.5 * decades * decades);
    }

    // B² = K Re + k Re², with value and slope of the published B(Re) = Re/Cd at the switch.
    private static (double Linear, double Quadratic) LaminarTerms(double l)
    {
        const double re = LaminarBelowReynolds;
        var ideal = re * InverseCoefficient(re, l);
        var slope = 1 / Ultimate(l) - PeakTerm(re, l) - re * PeakSlope(re, l);
        var linear = 2 * ideal * (ideal / re - slope);
        return (linear, (ideal * ideal / re - linear) / re);
    }

    private static double PeakSlope(double re, double l)
    {
        var decades = Math.Log10(0.00015 * re);
        var denominator = 1 + 7.5 * decades * decades;
        return -0.005 * l * 15 * decades / (denominator * denominator * re * Math.Log(10));
    }
}
