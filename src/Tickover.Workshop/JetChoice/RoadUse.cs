using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>How much each point of the map counts: how a road car is driven. Assumed; idle and progression carry most of the driving (trade reference 3.1).</summary>
public static class RoadUse
{
    private static readonly (string Regime, double Share, double FromPeak, double ToPeak)[] Shares =
    [
        ("idle", 0.10, 0, 0.22),
        ("progression", 0.35, 0.12, 0.65),
        ("cruise", 0.30, 0.20, 0.85),
        ("full load", 0.25, 0.25, 1.05),
    ];

    /// <summary>Weights of the points of a map, in order of speed, then opening; they add up to one.</summary>
    /// <param name="map">The map: where the car drives the engine nothing counts.</param>
    /// <param name="peakPowerRpm">Speed of peak power, rpm.</param>
    /// <returns>One weight a point.</returns>
    public static IReadOnlyList<double> Weights(MixtureMap map, double peakPowerRpm)
    {
        ArgumentNullException.ThrowIfNull(map);
        var points = map.Barrels[0].Points;
        var weights = new double[points.Length];
        foreach (var (regime, share, from, to) in Shares)
        {
            var inside = Enumerable.Range(0, points.Length).Where(p => Counts(p, regime, from * peakPowerRpm, to * peakPowerRpm)).ToList();
            inside.ForEach(p => weights[p] = share / inside.Count);
        }

        var all = weights.Sum();
        return all > 0 ? [.. weights.Select(w => w / all)] : weights;

        bool Counts(int point, string regime, double from, double to)
        {
            var (i, j) = (point / points.GetLength(1), point % points.GetLength(1));
            var rpm = map.Grid.SpeedsRpm[i];
            return rpm >= from && rpm <= to && string.Equals(MixtureTargets.At(map.Grid.ThrottleDegrees[j]).Regime, regime, StringComparison.Ordinal)
                && (points[i, j].Validity & (PointValidity.Overrun | PointValidity.NoAir)) == PointValidity.Inside;
        }
    }
}
