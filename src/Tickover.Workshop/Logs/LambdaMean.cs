namespace Tickover.Workshop.Logs;

/// <summary>Mean of λ over a stretch with its standard error, neighbours that go together counted once.</summary>
/// <param name="Mean">Mean, 1; NaN where there is none.</param>
/// <param name="Deviation">Standard deviation of the samples, 1.</param>
/// <param name="Error">Standard error of the mean, 1.</param>
/// <param name="Count">Samples.</param>
/// <param name="Slope">Change over time, 1/s.</param>
internal readonly record struct LambdaMean(double Mean, double Deviation, double Error, int Count, double Slope)
{
    /// <summary>Averages.</summary>
    /// <param name="values">Samples in order, finite.</param>
    /// <param name="step">Time between them, s.</param>
    /// <returns>The mean.</returns>
    internal static LambdaMean Of(List<double> values, double step)
    {
        var n = values.Count;
        if (n == 0)
        {
            return new(double.NaN, double.NaN, double.NaN, 0, 0);
        }

        var mean = values.Average();
        var variance = n < 2 ? 0 : values.Sum(v => (v - mean) * (v - mean)) / (n - 1);
        var independent = Math.Max(1, n / Inflation(values, mean, variance));
        var middle = (n - 1) / 2.0;
        var square = Enumerable.Range(0, n).Sum(i => (i - middle) * (i - middle));
        var slope = n < 3 ? 0 : Enumerable.Range(0, n).Sum(i => (i - middle) * (values[i] - mean)) / square / step;
        return new(mean, Math.Sqrt(variance), Math.Sqrt(variance / independent), n, slope);
    }

    // 1 + 2 Σ ρk up to where the sum of a pair of correlations turns negative (initial positive sequence; C. J. Geyer, Practical Markov
    // Chain Monte Carlo, Statistical Science 7 (1992) 473, section 3.3).
    private static double Inflation(List<double> values, double mean, double variance)
    {
        var n = values.Count;
        if (variance <= 0)
        {
            return 1;
        }

        double Correlation(int lag) => Enumerable.Range(0, n - lag).Sum(i => (values[i] - mean) * (values[i + lag] - mean)) / ((n - 1) * variance);
        var sum = -1.0;
        for (var lag = 0; lag + 1 < n / 2; lag += 2)
        {
            var pair = Correlation(lag) + Correlation(lag + 1);
            if (pair <= 0)
            {
                break;
            }

            sum += 2 * pair;
        }

        return Math.Max(1, sum);
    }
}
