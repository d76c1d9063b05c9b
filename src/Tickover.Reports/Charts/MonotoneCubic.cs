namespace Tickover.Reports.Charts;

/// <summary>Cubic interpolation that stays between its neighbours: it invents no peak and no hollow.</summary>
/// <remarks>
/// Slopes are weighted harmonic means of the neighbouring secants, zero at a turning point
/// (F. N. Fritsch, J. Butland, "A method for constructing local monotone piecewise cubic interpolants",
/// SIAM J. Sci. Stat. Comput. 5 (1984), 300-304; from memory).
/// </remarks>
internal static class MonotoneCubic
{
    /// <summary>Interpolates at many places at once.</summary>
    /// <param name="x">Rising places of the given values; at least one.</param>
    /// <param name="y">The values, finite.</param>
    /// <param name="at">Rising places asked for; outside the given ones the end value holds.</param>
    /// <param name="result">Receives the values, as many as <paramref name="at"/>.</param>
    internal static void Interpolate(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> at, Span<double> result)
    {
        if (x.Length == 1)
        {
            result[..at.Length].Fill(y[0]);
            return;
        }

        Span<double> slopes = x.Length <= 256 ? stackalloc double[x.Length] : new double[x.Length];
        Slopes(x, y, slopes);
        var cell = 0;
        for (var k = 0; k < at.Length; k++)
        {
            var place = Math.Clamp(at[k], x[0], x[^1]);
            while (cell < x.Length - 2 && place > x[cell + 1])
            {
                cell++;
            }

            var h = x[cell + 1] - x[cell];
            var t = (place - x[cell]) / h;
            var (t2, t3) = (t * t, t * t * t);
            var value = (2 * t3 - 3 * t2 + 1) * y[cell] + (t3 - 2 * t2 + t) * h * slopes[cell]
                + (3 * t2 - 2 * t3) * y[cell + 1] + (t3 - t2) * h * slopes[cell + 1];
            // Rounding may leave the interval by an ulp; the promise is that it never does
            result[k] = Math.Clamp(value, Math.Min(y[cell], y[cell + 1]), Math.Max(y[cell], y[cell + 1]));
        }
    }

    private static void Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> slopes)
    {
        var last = x.Length - 1;
        for (var i = 1; i < last; i++)
        {
            var (h0, h1) = (x[i] - x[i - 1], x[i + 1] - x[i]);
            var (d0, d1) = ((y[i] - y[i - 1]) / h0, (y[i + 1] - y[i]) / h1);
            slopes[i] = d0 * d1 <= 0 ? 0 : 3 * (h0 + h1) / ((2 * h1 + h0) / d0 + (h1 + 2 * h0) / d1);
        }

        slopes[0] = EndSlope(x[1] - x[0], (y[1] - y[0]) / (x[1] - x[0]), last > 1 ? slopes[1] : double.NaN);
        slopes[last] = EndSlope(
            x[last] - x[last - 1], (y[last] - y[last - 1]) / (x[last] - x[last - 1]), last > 1 ? slopes[last - 1] : double.NaN);
    }

    // A parabola through the end, held to three times the secant so that it stays monotone
    private static double EndSlope(double h, double secant, double inner)
    {
        if (double.IsNaN(inner) || h <= 0)
        {
            return secant;
        }

        var slope = (3 * secant - inner) / 2;
        return slope * secant <= 0 ? 0 : Math.Abs(slope) > 3 * Math.Abs(secant) ? 3 * secant : slope;
    }
}
