using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Tickover.Physics.Estimation;

/// <summary>Nonlinear least squares after Levenberg and Marquardt, with Huber's loss. docs/physics/estimation.md (1) to (4).</summary>
/// <remarks>Decision 0110 says why this is our own: the loss, rows that are priors, and a model of which every computation counts.</remarks>
public static class LeastSquares
{
    private const double FirstDamping = 1e-3;
    private const double LeastDamping = 1e-14;
    private const double MostDamping = 1e16;

    /// <summary>Finds the parameters that make the residuals least.</summary>
    /// <param name="residuals">The model: parameters to residuals, always as many; what is not finite counts as a step too far.</param>
    /// <param name="start">Parameters to start from; the residuals there have to be finite.</param>
    /// <param name="settings">How; null for the defaults.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>What was found and how the search ended.</returns>
    /// <exception cref="ArgumentException">There is no parameter, no residual, or one at the start is not finite.</exception>
    public static LeastSquaresResult Solve(
        Func<double[], double[]> residuals, IReadOnlyList<double> start, LeastSquaresSettings? settings = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(residuals);
        ArgumentNullException.ThrowIfNull(start);
        var how = settings ?? new LeastSquaresSettings();
        var first = residuals([.. start]);
        if (start.Count == 0 || first.Length == 0 || !Array.TrueForAll(first, double.IsFinite))
        {
            throw new ArgumentException("there must be parameters, and finite residuals at the start", nameof(start));
        }

        var search = new Search(residuals, how, [.. start], first);
        while (search.Ending is null)
        {
            cancellation.ThrowIfCancellationRequested();
            search.Step();
        }

        return search.Result(search.Ending.Value);
    }

    private sealed class Search
    {
        private readonly Func<double[], double[]> _model;
        private readonly LeastSquaresSettings _how;
        private readonly Differences _differences;
        private double[] _at;
        private double[] _residuals;
        private double[,] _jacobian;
        private readonly double[] _scale;
        private double _cost;
        private double _damping = FirstDamping;
        private double _growth = 2;
        private int _steps;
        private int _evaluations = 1;

        internal Search(Func<double[], double[]> model, LeastSquaresSettings how, double[] start, double[] residuals)
        {
            (_model, _how, _at, _residuals) = (model, how, start, residuals);
            _differences = new Differences(model, how);
            _scale = new double[start.Length];
            _cost = CostOf(residuals);
            _jacobian = Turn();
        }

        internal EstimateEnding? Ending { get; private set; }

        internal LeastSquaresResult Result(EstimateEnding ending) => new()
        {
            Parameters = _at,
            Residuals = _residuals,
            Jacobian = _jacobian,
            Cost = _cost,
            Ending = ending,
            Steps = _steps,
            Evaluations = _evaluations,
            Weights = [.. _residuals.Select((r, i) => Huber.Weight(r, Limit(i)))],
        };

        /// <summary>One accepted step, or the end.</summary>
        internal void Step()
        {
            while (Ending is null)
            {
                var (move, promised) = Move();
                var next = _at.Zip(move, (a, m) => a + m).ToArray();
                var settled = IsSmall(move);
                var tried = _model(next);
                _evaluations++;
                var cost = Array.TrueForAll(tried, double.IsFinite) ? CostOf(tried) : double.PositiveInfinity;
                if (cost < _cost)
                {
                    Take(next, tried, cost, promised);
                    Ending = settled ? EstimateEnding.ParametersSettled : Ending;
                    return;
                }

                Ending = settled ? EstimateEnding.ParametersSettled : _damping > MostDamping ? EstimateEnding.NoWayDown : null;
                _damping *= _growth;                                                          // (4)
                _growth *= 2;
            }
        }

        private void Take(double[] next, double[] residuals, double cost, double promised)
        {
            var gain = promised > 0 ? (_cost - cost) / promised : 1;
            var settled = _cost - cost <= _how.CostTolerance * _cost && promised <= _how.CostTolerance * _cost;
            (_at, _residuals, _cost) = (next, residuals, cost);
            var better = 2 * gain - 1;
            _damping = Math.Max(LeastDamping, _damping * Math.Max(1.0 / 3, 1 - better * better * better));   // (4), Nielsen 1999
            _growth = 2;
            _jacobian = Turn();
            Ending = settled || cost == 0 ? EstimateEnding.CostSettled : ++_steps >= _how.MaximumSteps ? EstimateEnding.OutOfSteps : null;
        }

        private double[,] Turn()
        {
            var (jacobian, evaluations) = _differences.At(_at, _residuals);
            _evaluations += evaluations;
            for (var p = 0; p < _at.Length; p++)
            {
                var sum = 0.0;
                for (var i = 0; i < _residuals.Length; i++)
                {
                    sum += jacobian[i, p] * jacobian[i, p];
                }

                _scale[p] = Math.Max(_scale[p], Math.Sqrt(sum));
            }

            return jacobian;
        }

        // (3): the damped normal equations, solved as the least-squares problem they come from, which keeps twice the digits
        private (double[] Move, double Promised) Move()
        {
            var (rows, columns) = (_residuals.Length, _at.Length);
            var matrix = Matrix<double>.Build.Dense(rows + columns, columns);
            var right = Vector<double>.Build.Dense(rows + columns);
            for (var i = 0; i < rows; i++)
            {
                var root = Math.Sqrt(Huber.Weight(_residuals[i], Limit(i)));
                right[i] = -root * _residuals[i];
                for (var p = 0; p < columns; p++)
                {
                    matrix[i, p] = root * _jacobian[i, p];
                }
            }

            for (var p = 0; p < columns; p++)
            {
                matrix[rows + p, p] = Math.Sqrt(_damping) * (_scale[p] > 0 ? _scale[p] : 1);
            }

            var move = matrix.QR(QRMethod.Thin).Solve(right);
            var linear = matrix.SubMatrix(0, rows, 0, columns) * move - right.SubVector(0, rows);
            var promised = 0.5 * (right.SubVector(0, rows).DotProduct(right.SubVector(0, rows)) - linear.DotProduct(linear));
            return (move.ToArray(), promised);
        }

        private bool IsSmall(double[] move)
        {
            var moved = 0.0;
            for (var p = 0; p < move.Length; p++)
            {
                var unit = _how.Scale?[p] ?? Math.Max(Math.Abs(_at[p]), double.Epsilon);
                moved = Math.Max(moved, Math.Abs(move[p]) / unit);
            }

            return moved <= _how.ParameterTolerance;
        }

        private double CostOf(double[] residuals)
        {
            var sum = 0.0;
            for (var i = 0; i < residuals.Length; i++)
            {
                sum += Huber.Loss(residuals[i], Limit(i));
            }

            return sum;
        }

        private double Limit(int row) => row < _how.RobustRows ? _how.HuberLimit : double.PositiveInfinity;
    }
}
