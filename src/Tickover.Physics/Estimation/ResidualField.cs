using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Tickover.Physics.Estimation;

/// <summary>
/// What a model leaves over, taken as a smooth random field: neighbours err alike. docs/physics/estimation.md (5) to (7).
/// </summary>
/// <remarks>Without it a hundred readings of one speed would count as a hundred proofs, and bands would come out far too narrow.</remarks>
public sealed class ResidualField
{
    private readonly IReadOnlyList<double[]> _places;
    private readonly IReadOnlyList<double> _lengths;
    private readonly double _variance;
    private readonly Cholesky<double> _factor;

    /// <summary>Sets the field up over readings.</summary>
    /// <param name="places">Where each reading was taken, any coordinates, the same number for each.</param>
    /// <param name="lengths">Distance along each coordinate over which the field keeps its value, in that coordinate's unit, above zero.</param>
    /// <param name="deviation">Standard deviation of the field, in the unit of the residuals, not below zero.</param>
    /// <param name="noise">Standard deviation of each reading's own error, in the same unit, above zero.</param>
    public ResidualField(IReadOnlyList<double[]> places, IReadOnlyList<double> lengths, double deviation, IReadOnlyList<double> noise)
    {
        ArgumentNullException.ThrowIfNull(places);
        ArgumentNullException.ThrowIfNull(lengths);
        ArgumentNullException.ThrowIfNull(noise);
        (_places, _lengths, _variance) = (places, lengths, Precondition.NotNegative(deviation) * deviation);
        var matrix = Between(places, places);
        for (var i = 0; i < places.Count; i++)
        {
            matrix[i, i] += Precondition.Positive(noise[i]) * noise[i];
        }

        _factor = matrix.Cholesky();
    }

    /// <summary>Variance of the field itself, unit of the residuals squared.</summary>
    public double Variance => _variance;

    internal IReadOnlyList<double[]> Places => _places;

    /// <summary>Logarithm of how well the field explains residuals, less a constant. (6)</summary>
    /// <param name="residuals">One for each reading.</param>
    /// <returns>The logarithm; larger is better.</returns>
    public double LogLikelihood(IReadOnlyList<double> residuals)
    {
        var vector = Vector<double>.Build.DenseOfEnumerable(residuals);
        return -0.5 * vector.DotProduct(_factor.Solve(vector)) - 0.5 * _factor.DeterminantLn;
    }

    /// <summary>Residuals made independent and of unit deviation. (5)</summary>
    /// <param name="residuals">One for each reading.</param>
    /// <returns>As many.</returns>
    public double[] Whiten(IReadOnlyList<double> residuals)
    {
        var whitened = new double[residuals.Count];
        for (var i = 0; i < whitened.Length; i++)
        {
            var sum = residuals[i];
            for (var k = 0; k < i; k++)
            {
                sum -= _factor.Factor[i, k] * whitened[k];
            }

            whitened[i] = sum / _factor.Factor[i, i];
        }

        return whitened;
    }

    internal Matrix<double> Solve(Matrix<double> right) => _factor.Solve(right);

    internal Vector<double> Solve(Vector<double> right) => _factor.Solve(right);

    internal Matrix<double> ToReadings(IReadOnlyList<double[]> places) => Between(_places, places);

    internal Matrix<double> Between(IReadOnlyList<double[]> one, IReadOnlyList<double[]> other) =>
        Matrix<double>.Build.Dense(one.Count, other.Count, (i, j) => Covariance(one[i], other[j]));

    // (5): Matérn of order 3/2, smooth enough for a map and not so smooth that a gap is believed to be known
    private double Covariance(double[] one, double[] other)
    {
        var sum = 0.0;
        for (var d = 0; d < _lengths.Count; d++)
        {
            var x = (one[d] - other[d]) / _lengths[d];
            sum += x * x;
        }

        var r = Math.Sqrt(3 * sum);
        return _variance * (1 + r) * Math.Exp(-r);
    }
}
