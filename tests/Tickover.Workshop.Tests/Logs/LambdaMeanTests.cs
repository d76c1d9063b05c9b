using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Tests.Logs;

/// <summary>Standard errors against what is known of them.</summary>
public sealed class LambdaMeanTests
{
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.6)]
    [InlineData(0.85)]
    public void The_error_of_a_mean_covers_neighbours_that_go_together(double together)
    {
        // First-order autoregression: the variance of a mean of n is σ² (1 + φ) / (1 − φ) / n for long series (Box, Jenkins and Reinsel, Time Series Analysis, chapter 3).
        const int n = 400;
        const int trials = 400;
        var random = new Random(11);
        var (means, errors) = (new List<double>(), new List<double>());
        for (var t = 0; t < trials; t++)
        {
            var (values, x) = (new List<double>(), 0.0);
            for (var i = 0; i < n + 50; i++)
            {
                x = together * x + Math.Sqrt(1 - together * together) * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
                values.Add(x);
            }

            var mean = LambdaMean.Of(values[50..], 0.1);
            means.Add(mean.Mean);
            errors.Add(mean.Error);
        }

        var theory = Math.Sqrt((1 + together) / (1 - together) / n);
        Assert.Equal(theory, Math.Sqrt(means.Sum(m => m * m) / trials), 0.1 * theory);
        Assert.Equal(theory, errors.Average(), 0.2 * theory);
    }

    [Fact]
    public void Slope_is_that_of_a_straight_line()
    {
        Assert.Equal(0.03, LambdaMean.Of([.. Enumerable.Range(0, 50).Select(i => 0.9 + 0.003 * i)], 0.1).Slope, 1e-9);
    }
}
