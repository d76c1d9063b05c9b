using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>How much each point of the map counts: how a road car is driven. All assumed; a workshop that knows better says so by its targets.</summary>
/// <remarks>
/// Idle a tenth; a steady road load, rising with the square of the speed, nearly half; twice that load, for hills and gentle acceleration, a fifth;
/// wide open a quarter. docs/jet-choice.md.
/// </remarks>
public static class RoadUse
{
    private const double Bar = 1e5;
    private const double RollingBar = 0.8;                // mean pressure for rolling, top gear
    private const double DragBar = 4.0;                   // and for drag at the speed of peak power
    private const double LoadSpread = 0.35;               // of the logarithm of the load
    private const double UsualSpeed = 0.45;               // of the speed of peak power
    private const double SpeedSpread = 0.15;
    private const double IdleBelow = 0.22;
    private const double PullFrom = 0.3;

    /// <summary>Weights of the points of a map, in order of speed, then opening; they add up to one.</summary>
    /// <param name="map">The map: where the car drives the engine nothing counts.</param>
    /// <param name="peakPowerRpm">Speed of peak power, rpm.</param>
    /// <returns>One weight a point.</returns>
    public static IReadOnlyList<double> Weights(MixtureMap map, double peakPowerRpm)
    {
        ArgumentNullException.ThrowIfNull(map);
        var points = map.Barrels[0].Points;
        var uses = new (double Share, Func<double, double, double, double> Weight)[]
        {
            (0.10, (x, degrees, _) => degrees < 4 && x < IdleBelow ? 1 : 0),
            (0.45, (x, degrees, bar) => degrees < 48 ? Speed(x) * Load(bar, Road(x)) : 0),
            (0.20, (x, degrees, bar) => degrees < 48 ? Speed(x) * Load(bar, 2 * Road(x)) : 0),
            (0.25, (x, degrees, _) => degrees >= 48 && x > PullFrom ? 1 : 0),
        };
        var weights = new double[points.Length];
        foreach (var (share, weight) in uses)
        {
            Spread(weights, share, [.. Enumerable.Range(0, points.Length).Select(p => Of(p, weight))]);
        }

        var all = weights.Sum();
        return all > 0 ? [.. weights.Select(w => w / all)] : weights;

        double Of(int point, Func<double, double, double, double> weight)
        {
            var (i, j) = (point / points.GetLength(1), point % points.GetLength(1));
            var runs = (points[i, j].Validity & (PointValidity.Overrun | PointValidity.NoAir)) == PointValidity.Inside;
            var x = map.Grid.SpeedsRpm[i] / peakPowerRpm;
            return runs ? weight(x, map.Grid.ThrottleDegrees[j], points[i, j].BrakeMeanPressurePascals / Bar) : 0;
        }
    }

    private static double Road(double x) => RollingBar + DragBar * x * x;

    private static double Speed(double x) => Math.Exp(-0.5 * Math.Pow((x - UsualSpeed) / SpeedSpread, 2));

    private static double Load(double bar, double usual) => bar <= 0 ? 0 : Math.Exp(-0.5 * Math.Pow(Math.Log(bar / usual) / LoadSpread, 2));

    private static void Spread(double[] weights, double share, double[] use)
    {
        var all = use.Sum();
        for (var p = 0; p < weights.Length && all > 0; p++)
        {
            // what hardly ever happens does not count at all, and keeps the search short
            weights[p] += use[p] / all > 1e-4 ? share * use[p] / all : 0;
        }
    }
}
