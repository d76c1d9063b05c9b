using Tickover.Physics.Estimation;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>How sure the expected share of driving in target is: errors of a map hang together, so the share spreads far more than its points tell singly.</summary>
internal static class ShareBand
{
    private const int Draws = 400;                        // leaves the ends of the band good to about a per cent
    private const double Tail = 0.05;

    /// <summary>The 90 % band of the share in target.</summary>
    /// <param name="map">What is foretold.</param>
    /// <param name="cells">Points that count.</param>
    /// <param name="weights">Weight by point.</param>
    /// <param name="targets">Target by point.</param>
    internal static (double Lowest, double Highest) Of(PredictedMap map, IReadOnlyList<int> cells, IReadOnlyList<double> weights, IReadOnlyList<LambdaBand> targets)
    {
        if (cells.Count == 0)
        {
            return (0, 0);
        }

        var covariance = new double[cells.Count, cells.Count];
        for (var i = 0; i < cells.Count; i++)
        {
            for (var k = 0; k < cells.Count; k++)
            {
                covariance[i, k] = map.Covariance[cells[i], cells[k]];
            }
        }

        var all = cells.Sum(p => weights[p]);
        var shares = CorrelatedErrors.Draw(covariance, Draws).Select(off => cells.Select((p, i) => IsInBand(map.LogLambda[p] + off[i], targets[p]) ? weights[p] : 0).Sum() / all).ToArray();
        Array.Sort(shares);
        return (shares[(int)(Tail * Draws)], shares[(int)((1 - Tail) * Draws) - 1]);
    }

    private static bool IsInBand(double logLambda, LambdaBand band) => logLambda >= Math.Log(band.Richest) && logLambda <= Math.Log(band.Leanest);
}
