using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Estimation;

/// <summary>Which few of many columns explain a set of readings: orthogonal matching pursuit, one column at a time. docs/physics/estimation.md (14).</summary>
/// <remarks>J. A. Tropp and A. C. Gilbert, <i>IEEE Trans. Inf. Theory</i> 53 (2007), 4655-4666 (from memory).</remarks>
public sealed class MatchingPursuit
{
    private readonly Vector<double> _readings;
    private readonly Vector<double>[] _columns;

    /// <summary>Sets it up.</summary>
    /// <param name="readings">What is to be explained.</param>
    /// <param name="columns">What each unknown would do to every reading for one unit of it; all as long as the readings.</param>
    /// <exception cref="ArgumentException">A column is shorter or longer than the readings.</exception>
    public MatchingPursuit(IReadOnlyList<double> readings, IReadOnlyList<IReadOnlyList<double>> columns)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(columns);
        if (columns.Any(c => c.Count != readings.Count))
        {
            throw new ArgumentException($"every column must have {readings.Count} entries", nameof(columns));
        }

        _readings = Vector<double>.Build.DenseOfEnumerable(readings);
        _columns = [.. columns.Select(c => Vector<double>.Build.DenseOfEnumerable(c))];
    }

    /// <summary>Sum of squares that some columns leave with their best coefficients.</summary>
    /// <param name="some">Numbers of the columns; no more than there are readings.</param>
    /// <returns>The sum; that of the readings themselves for no column.</returns>
    public double Left(IReadOnlyList<int> some)
    {
        ArgumentNullException.ThrowIfNull(some);
        if (some.Count == 0)
        {
            return _readings.DotProduct(_readings);
        }

        var matrix = Matrix<double>.Build.DenseOfColumnVectors(some.Select(i => _columns[i]));
        var left = _readings - matrix * matrix.QR().Solve(_readings);
        return left.DotProduct(left);
    }

    /// <summary>The column that leaves least beside those taken in.</summary>
    /// <param name="taken">Numbers of those taken in.</param>
    /// <param name="among">Numbers to choose among.</param>
    /// <param name="promising">What it may leave at most, as a part of what those taken in leave.</param>
    /// <returns>Its number; null where none leaves so little.</returns>
    public int? Next(IReadOnlyList<int> taken, IReadOnlyList<int> among, double promising)
    {
        ArgumentNullException.ThrowIfNull(taken);
        ArgumentNullException.ThrowIfNull(among);
        var left = promising * Left(taken);
        int? best = null;
        foreach (var column in among.Except(taken))
        {
            var leaves = Left([.. taken, column]); // estimation (14)
            (best, left) = leaves < left ? (column, leaves) : (best, left);
        }

        return best;
    }
}
