using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Tickover.Physics.Balancing;

/// <summary>How well readings agree with one set of faults or another: Gaussian evidence with amplitudes and misadjustment integrated out.</summary>
/// <remarks>docs/physics/balancing.md (11) to (13): the matrix-inversion and determinant lemmas, so that a pair of faults costs a few products.</remarks>
public sealed class FaultEvidence
{
    private readonly Vector<double> _readings;
    private readonly Cholesky<double> _ordinary;
    private readonly Dictionary<FaultPattern, Prepared> _prepared = new(ReferenceEqualityComparer.Instance);

    /// <summary>Begins with the readings and how they scatter with no fault at all.</summary>
    /// <param name="readings">The readings, less what is expected of all.</param>
    /// <param name="noise">Variances of the readings; above zero, as many.</param>
    /// <param name="misadjustment">What ordinary misadjustment does: shapes with their standard deviations.</param>
    public FaultEvidence(IReadOnlyList<double> readings, IReadOnlyList<double> noise, IEnumerable<(double[] Shape, double Deviation)> misadjustment)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(noise);
        ArgumentNullException.ThrowIfNull(misadjustment);
        _readings = Vector<double>.Build.DenseOfEnumerable(readings);
        var covariance = Matrix<double>.Build.DenseOfDiagonalArray([.. noise]);
        foreach (var (shape, deviation) in misadjustment)
        {
            var column = Vector<double>.Build.Dense(shape);
            covariance += deviation * deviation * column.OuterProduct(column);
        }

        _ordinary = covariance.Cholesky();
    }

    /// <summary>Natural logarithm of the readings' density under some faults, less a constant of the readings.</summary>
    /// <param name="faults">The faults; none for an engine that merely wants adjusting.</param>
    /// <returns>The logarithm; only differences mean anything.</returns>
    public double Log(IReadOnlyList<FaultPattern> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        List<Prepared> parts = [.. faults.Select(Prepare)];
        var rest = _readings.Clone();
        parts.ForEach(p => rest -= p.Expected);
        var size = parts.Sum(p => p.Shapes.ColumnCount);
        var weighed = _ordinary.Solve(rest);
        var whole = rest.DotProduct(weighed);
        if (size == 0)
        {
            return -0.5 * (whole + _ordinary.DeterminantLn);
        }

        var shapes = parts.Select(p => p.Shapes).Aggregate((a, b) => a.Append(b));
        var solved = parts.Select(p => p.Solved).Aggregate((a, b) => a.Append(b));
        double[] variances = [.. parts.SelectMany(p => Enumerable.Repeat(p.Variance, p.Shapes.ColumnCount))];
        var inner = shapes.TransposeThisAndMultiply(solved);
        for (var i = 0; i < size; i++)
        {
            inner[i, i] += 1 / variances[i];
        }

        var factor = inner.Cholesky();
        var across = shapes.TransposeThisAndMultiply(weighed);
        var square = whole - across.DotProduct(factor.Solve(across)); // (12)
        return -0.5 * (square + _ordinary.DeterminantLn + factor.DeterminantLn + variances.Sum(Math.Log)); // (13)
    }

    private Prepared Prepare(FaultPattern fault)
    {
        if (!_prepared.TryGetValue(fault, out var prepared))
        {
            var shapes = Matrix<double>.Build.DenseOfColumns(fault.Shapes);
            prepared = new Prepared(shapes, _ordinary.Solve(shapes), fault.Mean * shapes.RowSums(), fault.Deviation * fault.Deviation);
            _prepared[fault] = prepared;
        }

        return prepared;
    }

    private sealed record Prepared(Matrix<double> Shapes, Matrix<double> Solved, Vector<double> Expected, double Variance);
}
