namespace Tickover.Physics.Sending;

/// <summary>A small extended Kalman filter with its own arrays; derivatives by differences.</summary>
internal sealed class SmallKalman
{
    private readonly int _n;
    private readonly double[] _p;
    private readonly double[] _f;
    private readonly double[] _work;

    internal SmallKalman(double[] state)
    {
        State = state;
        _n = state.Length;
        (_p, _f, _work) = (new double[_n * _n], new double[_n * _n], new double[_n * _n]);
    }

    internal double[] State { get; private set; }

    /// <summary>Adds an error of its own to one member, one standard deviation.</summary>
    internal void Widen(int member, double deviation) => _p[member * _n + member] += deviation * deviation;

    /// <summary>Adds an error that takes from one member what it gives another.</summary>
    internal void WidenAgainst(int one, int other, double variance)
    {
        _p[one * _n + one] += variance;
        _p[other * _n + other] += variance;
        _p[one * _n + other] -= variance;
        _p[other * _n + one] -= variance;
    }

    internal double VarianceOfSum(int one, int other) =>
        Math.Max(0, _p[one * _n + one] + _p[other * _n + other] + 2 * _p[one * _n + other]);

    /// <summary>Moves state and covariance on.</summary>
    internal void Move(Func<double[], double[]> next, double[] scales)
    {
        var moved = next(State);
        for (var column = 0; column < _n; column++)
        {
            var kept = State[column];
            State[column] = kept + scales[column];
            var there = next(State);
            State[column] = kept;
            for (var row = 0; row < _n; row++)
            {
                _f[row * _n + column] = (there[row] - moved[row]) / scales[column];
            }
        }

        Multiply(_f, _p, _work, transposed: false);
        Multiply(_work, _f, _p, transposed: true);
        State = moved;
    }

    /// <summary>Takes in a reading of one member.</summary>
    /// <returns>Reading less expectation, and the deviation expected of that.</returns>
    internal (double Innovation, double Expected) Read(int member, double reading, double variance)
    {
        var innovation = reading - State[member];
        var total = _p[member * _n + member] + variance;
        var gains = new double[_n];
        for (var i = 0; i < _n; i++)
        {
            gains[i] = _p[i * _n + member] / total; // sending (23)
        }

        var row = _p.AsSpan(member * _n, _n).ToArray();
        for (var i = 0; i < _n; i++)
        {
            State[i] += gains[i] * innovation;
            for (var j = 0; j < _n; j++)
            {
                _p[i * _n + j] -= gains[i] * row[j];
            }
        }

        return (innovation, Math.Sqrt(_p[member * _n + member]));
    }

    private void Multiply(double[] a, double[] b, double[] into, bool transposed)
    {
        var result = new double[_n * _n];
        for (var i = 0; i < _n; i++)
        {
            for (var j = 0; j < _n; j++)
            {
                double sum = 0;
                for (var k = 0; k < _n; k++)
                {
                    sum += a[i * _n + k] * (transposed ? b[j * _n + k] : b[k * _n + j]);
                }

                result[i * _n + j] = sum;
            }
        }

        result.CopyTo(into, 0);
    }
}
