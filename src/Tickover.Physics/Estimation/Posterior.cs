using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Estimation;

/// <summary>What readings leave open: parameters with covariance, and predictions with bands. docs/physics/estimation.md (8) to (12).</summary>
public sealed class Posterior
{
    private readonly ResidualField _field;
    private readonly Matrix<double> _jacobian;
    private readonly Vector<double> _weighted;          // K⁻¹ r
    private readonly Matrix<double> _solvedJacobian;    // K⁻¹ J
    private readonly Matrix<double> _covariance;
    private readonly Vector<double> _residuals;
    private readonly Matrix<double> _priorVariance;

    /// <summary>Sets it up at parameters found.</summary>
    /// <param name="field">The field over the readings.</param>
    /// <param name="jacobian">Change of each prediction of a reading with each parameter, [reading, parameter].</param>
    /// <param name="residuals">Reading less prediction at the parameters found.</param>
    /// <param name="priorDeviations">Standard deviation of each parameter before the readings, above zero.</param>
    public Posterior(ResidualField field, double[,] jacobian, IReadOnlyList<double> residuals, IReadOnlyList<double> priorDeviations)
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(jacobian);
        _field = field;
        _jacobian = Matrix<double>.Build.DenseOfArray(jacobian);
        _residuals = Vector<double>.Build.DenseOfEnumerable(residuals);
        _weighted = field.Solve(_residuals);
        _solvedJacobian = field.Solve(_jacobian);
        _priorVariance = Matrix<double>.Build.DenseOfDiagonalArray([.. priorDeviations.Select(d => Precondition.Positive(d) * d)]);
        _covariance = (_jacobian.TransposeThisAndMultiply(_solvedJacobian) + _priorVariance.Inverse()).Cholesky()
            .Solve(Matrix<double>.Build.DenseIdentity(priorDeviations.Count));                     // (8)
    }

    /// <summary>Covariance of the parameters, [parameter, parameter].</summary>
    /// <returns>A copy.</returns>
    public double[,] Covariance() => _covariance.ToArray();

    /// <summary>What is predicted beyond the model itself, and how sure it is.</summary>
    /// <param name="places">Where.</param>
    /// <param name="jacobian">Change of each prediction with each parameter, [place, parameter].</param>
    /// <returns>What to add to the model's prediction, and the covariance of the sum.</returns>
    public Prediction Predict(IReadOnlyList<double[]> places, double[,] jacobian)
    {
        ArgumentNullException.ThrowIfNull(places);
        var toReadings = _field.ToReadings(places);
        var correction = toReadings.TransposeThisAndMultiply(_weighted);                            // (9)
        var solved = _field.Solve(toReadings);
        var left = Matrix<double>.Build.DenseOfArray(jacobian) - toReadings.TransposeThisAndMultiply(_solvedJacobian);
        var covariance = _field.Between(places, places) - toReadings.TransposeThisAndMultiply(solved)
            + left * _covariance.TransposeAndMultiply(left);                                        // (10)
        return new Prediction(correction.ToArray(), covariance.ToArray());
    }

    /// <summary>Each group of readings predicted from the others alone, the model taken as straight near the parameters found. (11)</summary>
    /// <param name="groups">Number of the group of each reading.</param>
    /// <param name="noise">Standard deviation of each reading's own error.</param>
    /// <param name="fromPrior">How far each parameter found lies from its prior.</param>
    /// <returns>Error and standard deviation of it, by reading, the reading's own error included.</returns>
    public (double[] Errors, double[] Deviations) LeaveOut(IReadOnlyList<int> groups, IReadOnlyList<double> noise, IReadOnlyList<double> fromPrior)
    {
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentNullException.ThrowIfNull(noise);
        var all = _field.Between(_field.Places, _field.Places) + _jacobian * _priorVariance * _jacobian.Transpose();
        for (var i = 0; i < noise.Count; i++)
        {
            all[i, i] += noise[i] * noise[i];
        }

        var inverse = all.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(noise.Count));
        var weighted = inverse * (_residuals + _jacobian * Vector<double>.Build.DenseOfEnumerable(fromPrior));
        var (errors, deviations) = (new double[noise.Count], new double[noise.Count]);
        foreach (var group in groups.Select((g, i) => (Group: g, Index: i)).GroupBy(g => g.Group, g => g.Index))
        {
            var rows = group.ToArray();
            var block = Matrix<double>.Build.Dense(rows.Length, rows.Length, (i, j) => inverse[rows[i], rows[j]]).Inverse();
            var error = block * Vector<double>.Build.Dense(rows.Length, i => weighted[rows[i]]);
            for (var i = 0; i < rows.Length; i++)
            {
                (errors[rows[i]], deviations[rows[i]]) = (error[i], Math.Sqrt(Math.Max(0, block[i, i])));
            }
        }

        return (errors, deviations);
    }
}
