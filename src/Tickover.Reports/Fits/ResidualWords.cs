using System.Globalization;

namespace Tickover.Reports.Fits;

/// <summary>What the readings beside a fit say, in words and as a table.</summary>
internal static class ResidualWords
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>A bias, such as "0.03 lean".</summary>
    internal static string Bias(RegimeBias bias) => string.Create(C, $"{Math.Abs(bias.Mean):0.00} {(bias.Mean > 0 ? "lean" : "rich")}");

    internal static string Sentence(IReadOnlyList<Residual> residuals)
    {
        if (residuals.Count == 0)
        {
            return "No readings beside the fit.";
        }

        var outside = residuals.Count(r => r.IsOutside);
        var biases = RegimeBias.Of(residuals).Where(b => b.IsBias).Select(b => $"{Where(b)} read {Bias(b)} of the fit").ToList();
        var told = biases.Count == 0 ? "no regime is off the fit by more than chance explains" : string.Join("; ", biases);
        return string.Create(C, $"{residuals.Count} readings beside the fit, {(outside == 0 ? "none" : outside)} outside the 90 % band; {told}.");
    }

    internal static PictureTable Table(IReadOnlyList<Residual> residuals) => new(
        "λ read less λ fitted, by regime",
        ["Regime", "Readings", "Mean off", "90 % of the mean", "Outside the band"],
        [.. RegimeBias.Of(residuals).Select(b => (IReadOnlyList<string>)
        [
            Where(b), b.Count.ToString(C), Shown.LambdaDifference(b.Mean), string.Create(C, $"± {b.Error:0.00}"), b.Outside.ToString(C),
        ])]);

    private static string Where(RegimeBias bias) => bias.Bank == 0 ? bias.Regime : string.Create(C, $"{bias.Regime}, bank {bias.Bank}");
}
