using Tickover.Workshop.Calibration;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.JetChoice;

/// <summary>What a map foretells of each regime as a whole, by use.</summary>
internal static class RegimeForecast
{
    /// <summary>Mean λ with its 90 % band, and the share in target, by regime; regimes without a point that counts are left out.</summary>
    /// <param name="map">What is foretold.</param>
    /// <param name="ground">What it is judged on.</param>
    internal static IReadOnlyList<ExpectedRegime> Of(PredictedMap map, JetGround ground) =>
    [
        .. from regime in JetTargets.Regimes
           let points = ground.Cells.Where(p => string.Equals(ground.Targets[p].Regime, regime, StringComparison.Ordinal)).ToList()
           where points.Count > 0
           select Of(regime, points, map, ground),
    ];

    private static ExpectedRegime Of(string regime, List<int> points, PredictedMap map, JetGround ground)
    {
        var all = points.Sum(p => ground.Weights[p]);
        var mean = points.Sum(p => ground.Weights[p] * map.LogLambda[p]) / all;
        var variance = points.Sum(p => points.Sum(q => ground.Weights[p] * ground.Weights[q] * map.Covariance[p, q])) / (all * all);
        var half = Normal.Ninety * Math.Sqrt(Math.Max(0, variance));
        return new ExpectedRegime(regime, Math.Exp(mean), Math.Exp(mean - half), Math.Exp(mean + half), ground.InTarget(map, regime));
    }
}
