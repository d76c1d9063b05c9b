using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Estimation;

/// <summary>Draws of errors that hang together: what a sum or a share over a map is good to, where its points err alike.</summary>
/// <remarks>The same covariance gives the same draws each time. docs/physics/estimation.md.</remarks>
public static class CorrelatedErrors
{
    private const double Jitter = 1e-10;                  // of the largest variance: keeps it definite where points all but agree

    /// <summary>Draws errors of mean zero.</summary>
    /// <param name="covariance">Their covariance, symmetric, not negative, [error, error].</param>
    /// <param name="count">How many draws, at least 1.</param>
    /// <returns>One vector a draw.</returns>
    /// <exception cref="ArgumentException">The covariance is not square.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No draw is asked for.</exception>
    public static IReadOnlyList<double[]> Draw(double[,] covariance, int count)
    {
        ArgumentNullException.ThrowIfNull(covariance);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var size = covariance.GetLength(0);
        if (covariance.GetLength(1) != size)
        {
            throw new ArgumentException($"a covariance is square, not {size} by {covariance.GetLength(1)}", nameof(covariance));
        }

        var largest = Enumerable.Range(0, size).Select(i => covariance[i, i]).DefaultIfEmpty(0).Max();
        if (largest <= 0)
        {
            return [.. Enumerable.Range(0, count).Select(_ => new double[size])];
        }

        var factor = Matrix<double>.Build.Dense(size, size, (i, k) => covariance[i, k] + (i == k ? Jitter * largest : 0)).Cholesky().Factor;
        var normals = new EvenNormals();
        return [.. Enumerable.Range(0, count).Select(_ => (factor * Vector<double>.Build.Dense(size, _ => normals.Next())).ToArray())];
    }
}
