namespace Tickover.Physics.Breathing;

/// <summary>
/// Speeds the way to the periodic state of one operating point: Anderson's mixing of the last cycles.
/// </summary>
/// <remarks>
/// D. G. Anderson, J. ACM 12 (1965) 547; form of Walker and Ni, SIAM J. Numer. Anal. 49 (2011) 1715. Marching alone gains
/// a constant factor a cycle; mixing finds the fixed point of the cycle map in a few cycles where the map is nearly linear.
/// </remarks>
internal sealed class PeriodicCycle(int size)
{
    private const int Depth = 4;
    private const double Ridge = 1e-12;           // keeps nearly parallel differences from blowing up the mixing
    private const double FurthestLeap = 0.5;      // of the scale: beyond it the mixing is not trusted

    private readonly double[][] _df = [.. Enumerable.Range(0, Depth).Select(_ => new double[size])];
    private readonly double[][] _dg = [.. Enumerable.Range(0, Depth).Select(_ => new double[size])];
    private readonly double[] _lastF = new double[size];
    private readonly double[] _lastG = new double[size];
    private const int Patience = 6;               // cycles without halving the residual after which the memory is dropped
    private const int PlainCycles = 2;            // marched plainly after that, so that the map is near linear again

    private int _count;
    private int _plain;
    private int _since;
    private double _best;

    internal void Restart()
    {
        _count = -1;
        _plain = 0;
        _since = 0;
        _best = double.PositiveInfinity;
    }

    /// <summary>Takes one evaluation of the cycle map and gives the state to start the next cycle from.</summary>
    /// <param name="before">State before the cycle.</param>
    /// <param name="after">State after it; overwritten with the next start.</param>
    /// <param name="scale">Size of each number, for weighting.</param>
    /// <returns>Largest change over the cycle relative to the scale.</returns>
    internal double Next(ReadOnlySpan<double> before, Span<double> after, ReadOnlySpan<double> scale)
    {
        var worst = 0.0;
        Span<double> f = stackalloc double[size];
        for (var i = 0; i < size; i++)
        {
            f[i] = (after[i] - before[i]) / scale[i];
            worst = Math.Max(worst, Math.Abs(f[i]));
        }

        if (Stalled(worst))
        {
            _count = -1;
            _plain = PlainCycles;
        }

        Remember(f, after);
        if (_count > 0 && _plain-- <= 0)
        {
            Mix(f, after, scale);
        }

        return worst;
    }

    // Where a flow turns round within a step the map has corners, and old differences mislead the mixing.
    private bool Stalled(double worst)
    {
        if (worst < _best / 2)
        {
            _best = worst;
            _since = 0;
            return false;
        }

        if (++_since < Patience)
        {
            return false;
        }

        _since = 0;
        return true;
    }

    private void Remember(ReadOnlySpan<double> f, ReadOnlySpan<double> g)
    {
        if (_count >= 0)
        {
            var (df, dg) = (_df[_count % Depth], _dg[_count % Depth]);
            for (var i = 0; i < size; i++)
            {
                df[i] = f[i] - _lastF[i];
                dg[i] = g[i] - _lastG[i];
            }
        }

        f.CopyTo(_lastF);
        g.CopyTo(_lastG);
        _count++;
    }

    private void Mix(ReadOnlySpan<double> f, Span<double> g, ReadOnlySpan<double> scale)
    {
        var m = Math.Min(_count, Depth);
        Span<double> matrix = stackalloc double[Depth * Depth];
        Span<double> weights = stackalloc double[Depth];
        for (var a = 0; a < m; a++)
        {
            weights[a] = Dot(_df[a], f);
            for (var b = 0; b < m; b++)
            {
                matrix[a * Depth + b] = Dot(_df[a], _df[b]);
            }
        }

        if (!Solve(matrix, weights, m))
        {
            return;
        }

        Span<double> leap = stackalloc double[size];
        var furthest = 0.0;
        for (var i = 0; i < size; i++)
        {
            for (var a = 0; a < m; a++)
            {
                leap[i] -= weights[a] * _dg[a][i];
            }

            furthest = Math.Max(furthest, Math.Abs(leap[i] / scale[i]));
        }

        if (furthest > FurthestLeap || !double.IsFinite(furthest))
        {
            return;
        }

        for (var i = 0; i < size; i++)
        {
            g[i] += leap[i];
        }
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    // Cholesky would do for a definite matrix; elimination with pivots also survives rounding.
    private static bool Solve(Span<double> matrix, Span<double> right, int m)
    {
        var trace = 0.0;
        for (var a = 0; a < m; a++)
        {
            trace += matrix[a * Depth + a];
        }

        for (var a = 0; a < m; a++)
        {
            matrix[a * Depth + a] += Ridge * trace;
        }

        for (var a = 0; a < m; a++)
        {
            var pivot = matrix[a * Depth + a];
            if (Math.Abs(pivot) < double.Epsilon)
            {
                return false;
            }

            for (var b = a + 1; b < m; b++)
            {
                var factor = matrix[b * Depth + a] / pivot;
                right[b] -= factor * right[a];
                for (var c = a; c < m; c++)
                {
                    matrix[b * Depth + c] -= factor * matrix[a * Depth + c];
                }
            }
        }

        BackSubstitute(matrix, right, m);
        return true;
    }

    private static void BackSubstitute(ReadOnlySpan<double> matrix, Span<double> right, int m)
    {
        for (var a = m - 1; a >= 0; a--)
        {
            for (var b = a + 1; b < m; b++)
            {
                right[a] -= matrix[a * Depth + b] * right[b];
            }

            right[a] /= matrix[a * Depth + a];
        }
    }
}
