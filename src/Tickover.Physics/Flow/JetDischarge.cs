namespace Tickover.Physics.Flow;

/// <summary>Discharge coefficient of a jet: a drilled bore some diameters long.</summary>
/// <remarks>
/// A. Lichtarowicz, R. K. Duggins and E. Markland, "Discharge coefficients for incompressible non-cavitating flow through long orifices",
/// J. Mech. Eng. Sci. 7(2), 1965, 210-219, eq. (7) and (12), as transcribed in open projects. Stated to 0.02 for length over diameter
/// 2 to 10 and Reynolds numbers 10 to 20 000. The Reynolds number is taken with the loss-free speed: see docs/decisions/0021.
/// </remarks>
public static class JetDischarge
{
    /// <summary>Largest length over diameter for which the formula keeps its meaning at all, 1.</summary>
    public const double LongestLengthRatio = 50;

    /// <summary>Discharge coefficient, 1.</summary>
    /// <param name="idealReynolds">Reynolds number of the loss-free speed √(2Δp/ρ) in the bore, 1; not negative, stated range 10 to 20 000.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1; stated range 2 to 10.</param>
    /// <returns>1; zero at rest, where the flow is in proportion to the pressure drop.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is negative or the length not within 0 to <see cref="LongestLengthRatio"/>.</exception>
    public static double Coefficient(double idealReynolds, double lengthRatio)
    {
        var re = Precondition.NotNegative(idealReynolds);
        var l = Precondition.Within(lengthRatio, 0, LongestLengthRatio);
        return re / (InertiaTerm(re, l) * re + ViscousTerm(l)); // flow (17), multiplied through so that rest is no division by zero
    }

    /// <summary>Reynolds number of the loss-free speed that a real flow needs, 1.</summary>
    /// <param name="reynolds">Reynolds number of the mean speed in the bore, 1; not negative.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1.</param>
    /// <returns>1; not below the real one.</returns>
    internal static double IdealReynolds(double reynolds, double lengthRatio)
    {
        const int maximumIterations = 60;
        const double tolerance = 1e-14; // relative; a few units in the last place
        var l = Precondition.Within(lengthRatio, 0, LongestLengthRatio);
        var ideal = reynolds;
        for (var iteration = 0; iteration < maximumIterations; iteration++)
        {
            // The peak term moves the root by a few per cent at most, so each step gains about two digits.
            var half = InertiaTerm(ideal, l) * reynolds / 2;
            var next = half + Math.Sqrt(half * half + ViscousTerm(l) * reynolds); // flow (19)
            if (Math.Abs(next - ideal) <= tolerance * next)
            {
                return next;
            }

            ideal = next;
        }

        return ideal;
    }

    private static double ViscousTerm(double l) => 20 * (1 + 2.25 * l);

    private static double InertiaTerm(double re, double l)
    {
        var ultimate = 0.827 - 0.0085 * l; // flow (18)
        var decades = Math.Log10(0.00015 * re); // minus infinity at rest, where the term below vanishes
        return 1 / ultimate - 0.005 * l / (1 + 7.5 * decades * decades);
    }
}
