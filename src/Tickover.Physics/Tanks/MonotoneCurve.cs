namespace Tickover.Physics.Tanks;

/// <summary>A smooth curve through points that never turns back between them, both ways. docs/physics/tanks.md (12).</summary>
/// <remarks>F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984), the harmonic mean of the slopes (from memory). Beyond the ends it goes on straight.</remarks>
public sealed class MonotoneCurve
{
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _slopes;

    private MonotoneCurve(double[] x, double[] y)
    {
        (_x, _y) = (x, y);
        _slopes = new double[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            _slopes[i] = i == 0 ? Secant(0) : i == x.Length - 1 ? Secant(i - 1) : Slope(i);
        }
    }

    /// <summary>First place, lowest x.</summary>
    public double First => _x[0];

    /// <summary>Last place, highest x.</summary>
    public double Last => _x[^1];

    /// <summary>A curve through points.</summary>
    /// <param name="points">Two or more, x rising, y never falling or never rising.</param>
    /// <returns>The curve; null where the points turn back.</returns>
    public static MonotoneCurve? Through(IEnumerable<(double X, double Y)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var (x, y) = (points.Select(p => Precondition.Finite(p.X)).ToArray(), points.Select(p => Precondition.Finite(p.Y)).ToArray());
        var runs = Enumerable.Range(0, Math.Max(0, x.Length - 1)).ToArray();
        var good = x.Length > 1 && Array.TrueForAll(runs, i => x[i + 1] > x[i])
            && (Array.TrueForAll(runs, i => y[i + 1] >= y[i]) || Array.TrueForAll(runs, i => y[i + 1] <= y[i]));
        return good ? new MonotoneCurve(x, y) : null;
    }

    /// <summary>The curve at a place.</summary>
    /// <param name="x">The place.</param>
    /// <returns>y; beyond the ends straight on.</returns>
    public double At(double x)
    {
        Precondition.Finite(x);
        if (x <= First)
        {
            return _y[0] + _slopes[0] * (x - First);
        }

        if (x >= Last)
        {
            return _y[^1] + _slopes[^1] * (x - Last);
        }

        var found = Array.BinarySearch(_x, x);
        return found >= 0 ? _y[found] : Piece(~found - 1, x);
    }

    /// <summary>The place where the curve has a value.</summary>
    /// <param name="y">The value.</param>
    /// <returns>x; the end of the curve for a value beyond it, the first place where it runs level.</returns>
    public double Where(double y)
    {
        Precondition.Finite(y);
        var rising = _y[^1] >= _y[0];
        var (low, high) = (First, Last);
        for (var step = 0; step < 200 && high - low > 1e-15 * (Last - First); step++)
        {
            var middle = (low + high) / 2;
            var before = rising ? At(middle) < y : At(middle) > y;
            (low, high) = before ? (middle, high) : (low, middle);
        }

        return high;
    }

    private double Secant(int i) => (_y[i + 1] - _y[i]) / (_x[i + 1] - _x[i]);

    private double Slope(int i)
    {
        var (before, after) = (Secant(i - 1), Secant(i));
        if (before * after <= 0)
        {
            return 0;
        }

        var (left, right) = (_x[i] - _x[i - 1], _x[i + 1] - _x[i]);
        var weight = (left + 2 * right) / (3 * (left + right));
        return before * after / (weight * after + (1 - weight) * before); // tanks (12)
    }

    private double Piece(int i, double x)
    {
        var width = _x[i + 1] - _x[i];
        var t = (x - _x[i]) / width;
        var u = 1 - t;
        return u * u * (1 + 2 * t) * _y[i] + t * t * (1 + 2 * u) * _y[i + 1]
            + width * t * u * (u * _slopes[i] - t * _slopes[i + 1]);
    }
}
