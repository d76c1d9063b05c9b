namespace Tickover.Physics.Flow;

/// <summary>The square root with a sign, with a finite slope through zero.</summary>
/// <remarks>
/// Every orifice law has an infinite slope at no flow, which no solver can step over. Within the given width of zero the root is replaced
/// by an odd cubic that meets it in value and slope; outside it is the plain root to the last digit.
/// </remarks>
public static class SignedRoot
{
    private const double LinearTerm = 1.25; // from f(1) = 1 and f'(1) = 1/2 of a u + b u³
    private const double CubicTerm = -0.25;

    /// <summary>√x for positive, -√-x for negative x.</summary>
    /// <param name="x">Any finite number.</param>
    /// <param name="width">Where the cubic ends, in the unit of x; above zero.</param>
    /// <returns>The signed root; antisymmetric, rising, continuous in value and slope.</returns>
    public static double Of(double x, double width)
    {
        var u = x / width;
        return Math.Abs(u) < 1
            ? Math.Sqrt(width) * u * (LinearTerm + CubicTerm * u * u) // flow (9)
            : Math.CopySign(Math.Sqrt(Math.Abs(x)), x);
    }
}
