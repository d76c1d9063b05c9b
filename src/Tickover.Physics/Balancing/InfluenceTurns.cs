using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Balancing;

/// <summary>Turns that bring residuals to zero as nearly as least squares can, given influence coefficients.</summary>
/// <remarks>T. P. Goodman, J. Eng. Ind. 86 (1964), least-squares balancing by influence coefficients (from memory); docs/physics/balancing.md (1) to (3).</remarks>
public static class InfluenceTurns
{
    /// <summary>Influence coefficients from one trial a column: what a trial changed, divided by it.</summary>
    /// <param name="before">Residuals before.</param>
    /// <param name="after">Residuals after the trial; as many.</param>
    /// <param name="trial">The trial; not zero.</param>
    /// <returns>The column.</returns>
    public static IReadOnlyList<double> Column(IReadOnlyList<double> before, IReadOnlyList<double> after, double trial)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentOutOfRangeException.ThrowIfNotEqual(after.Count, before.Count, nameof(after));
        ArgumentOutOfRangeException.ThrowIfZero(trial);
        return [.. before.Select((r, i) => (after[i] - r) / trial)]; // (1)
    }

    /// <summary>Solves for the turns.</summary>
    /// <param name="influence">Change of each residual (rows) a turn of each adjuster (columns).</param>
    /// <param name="residuals">Residuals now; as many as rows.</param>
    /// <param name="weights">Weight of each residual; null weighs all alike.</param>
    /// <param name="damping">Keeps turns small where the residuals hardly tell them apart; 0 for none.</param>
    /// <returns>Turns by adjuster, and the condition number of the influence.</returns>
    public static (IReadOnlyList<double> Turns, double Condition) Solve(double[,] influence, IReadOnlyList<double> residuals, IReadOnlyList<double>? weights = null, double damping = 0)
    {
        ArgumentNullException.ThrowIfNull(influence);
        ArgumentNullException.ThrowIfNull(residuals);
        ArgumentOutOfRangeException.ThrowIfNotEqual(residuals.Count, influence.GetLength(0), nameof(residuals));
        var g = Matrix<double>.Build.DenseOfArray(influence);
        var w = Matrix<double>.Build.DenseOfDiagonalArray(weights is null ? [.. residuals.Select(_ => 1.0)] : [.. weights]);
        var normal = (g.Transpose() * w * g) + (damping * Matrix<double>.Build.DenseIdentity(g.ColumnCount));
        var right = g.Transpose() * w * Vector<double>.Build.DenseOfEnumerable(residuals);
        var turns = normal.Svd().Solve(-right); // (3)
        return ([.. turns], g.ConditionNumber());
    }

    /// <summary>The pseudo-inverse: turns it gives are the least-squares ones, and the smallest where several are.</summary>
    /// <param name="influence">Change of each residual (rows) a turn of each adjuster (columns).</param>
    /// <returns>Rows by adjuster, columns by residual.</returns>
    public static double[,] Inverse(double[,] influence)
    {
        ArgumentNullException.ThrowIfNull(influence);
        return Matrix<double>.Build.DenseOfArray(influence).PseudoInverse().ToArray();
    }
}
