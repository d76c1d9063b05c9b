using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Linkages;

/// <summary>The three ratios that fix what a planar four-bar does, whatever its size: docs/physics/linkages.md (1) to (3).</summary>
/// <remarks>F. Freudenstein, <i>Approximate synthesis of four-bar linkages</i>, Trans. ASME 77 (1955), 853-861 (from memory).</remarks>
/// <param name="K1">Ground over crank.</param>
/// <param name="K2">Ground over follower.</param>
/// <param name="K3">(a² − b² + c² + d²)/(2ac).</param>
public readonly record struct FreudensteinConstants(double K1, double K2, double K3)
{
    private const double Singular = 1e-12;

    /// <summary>How far a pair of angles is from fitting together.</summary>
    /// <param name="crankRadians">θ2, radians.</param>
    /// <param name="followerRadians">θ4, radians.</param>
    /// <returns>1; zero where the rod reaches.</returns>
    public double Residual(double crankRadians, double followerRadians) =>
        K1 * Math.Cos(followerRadians) - K2 * Math.Cos(crankRadians) + K3 - Math.Cos(crankRadians - followerRadians); // linkages (1)

    /// <summary>The ratios of the four-bar whose follower stands where it should at three positions of the crank.</summary>
    /// <param name="pairs">Three pairs of crank and follower angle, radians.</param>
    /// <returns>The ratios, or null where the three positions do not fix them.</returns>
    /// <exception cref="ArgumentException">There are not three pairs.</exception>
    public static FreudensteinConstants? Through(IReadOnlyList<(double CrankRadians, double FollowerRadians)> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (pairs.Count != 3)
        {
            throw new ArgumentException($"{pairs.Count} pairs; three fix the three ratios", nameof(pairs));
        }

        var matrix = Matrix<double>.Build.Dense(3, 3, (row, column) => column switch
        {
            0 => Math.Cos(pairs[row].FollowerRadians),
            1 => -Math.Cos(pairs[row].CrankRadians),
            _ => 1,
        });
        if (Math.Abs(matrix.Determinant()) < Singular)
        {
            return null;
        }

        var right = Vector<double>.Build.Dense(3, row => Math.Cos(pairs[row].CrankRadians - pairs[row].FollowerRadians));
        var k = matrix.LU().Solve(right); // linkages (3)
        return new FreudensteinConstants(k[0], k[1], k[2]);
    }
}
