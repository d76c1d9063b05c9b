namespace Tickover.Physics.Estimation;

/// <summary>Changes of residuals with parameters by finite differences.</summary>
internal sealed class Differences(Func<double[], double[]> residuals, LeastSquaresSettings settings)
{
    private const double Epsilon = 2.220446049250313e-16;   // of double precision

    /// <summary>Computes the Jacobian.</summary>
    /// <param name="at">Parameters.</param>
    /// <param name="there">Residuals at them.</param>
    /// <returns>The Jacobian, [row, parameter], and how often the model was computed.</returns>
    internal (double[,] Jacobian, int Evaluations) At(double[] at, double[] there)
    {
        var jacobian = new double[there.Length, at.Length];
        var part = settings.DifferenceStep ?? (settings.Central ? Math.Cbrt(Epsilon) : Math.Sqrt(Epsilon));
        for (var p = 0; p < at.Length; p++)
        {
            var size = settings.Scale?[p] ?? (at[p] == 0 ? 1 : Math.Abs(at[p]));
            var (up, high) = Moved(at, p, size * part);
            var (down, low) = settings.Central ? Moved(at, p, -size * part) : (there, at[p]);
            for (var i = 0; i < there.Length; i++)
            {
                var slope = (up[i] - down[i]) / (high - low);
                jacobian[i, p] = double.IsFinite(slope) ? slope : 0;
            }
        }

        return (jacobian, at.Length * (settings.Central ? 2 : 1));
    }

    private (double[] Residuals, double Value) Moved(double[] at, int parameter, double move)
    {
        var moved = (double[])at.Clone();
        moved[parameter] += move;
        return (residuals(moved), moved[parameter]);
    }
}
