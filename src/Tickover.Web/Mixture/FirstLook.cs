using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The place a map opens at: where the car is driven most, and there the place furthest from target.</summary>
/// <remarks>The worst of the whole map is often a corner nobody drives in; the sentence over the map tells of it all the same.</remarks>
internal static class FirstLook
{
    // Common practice: most driving is in the middle of the speeds on a light to half throttle
    private const double SlowestPart = 0.25;
    private const double FastestPart = 0.65;
    private const double SmallestDegrees = 5;
    private const double LargestDegrees = 45;

    private const PointValidity NoAnswer = PointValidity.Overrun | PointValidity.NoAir | PointValidity.NoFuel | PointValidity.NotSettled
        | PointValidity.BeyondRatedSpeed | PointValidity.TooLeanToRun | PointValidity.TooRichToRun;

    /// <summary>Finds the place.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">Barrel from 1.</param>
    /// <param name="otherwise">The place to take where nothing runs in that part of the map.</param>
    /// <returns>Speed in rpm and opening in degrees.</returns>
    public static (double Rpm, double Degrees) Of(MixtureMap map, int barrelNumber, FurthestPoint otherwise)
    {
        var (speeds, openings) = (map.Grid.SpeedsRpm, map.Grid.ThrottleDegrees);
        var points = map.ForBarrel(barrelNumber).Points;
        var middle = Middle(speeds, openings);
        var places =
            from i in Enumerable.Range(0, speeds.Count)
            from j in Enumerable.Range(0, openings.Count)
            where IsDriven(speeds, i) && openings[j] is >= SmallestDegrees and <= LargestDegrees && StandsInAnswers(points, i, j)
            orderby Beyond(points[i, j], openings[j]) descending, Math.Abs(i - middle.I) + Math.Abs(j - middle.J)
            select (speeds[i], openings[j]);
        return places.FirstOrDefault((otherwise.SpeedRpm, otherwise.ThrottleDegrees));
    }

    private static bool IsDriven(IReadOnlyList<double> speeds, int i)
    {
        var part = (speeds[i] - speeds[0]) / Math.Max(1, speeds[^1] - speeds[0]);
        return part is >= SlowestPart and <= FastestPart;
    }

    // Beside a border the figures are those of a point that hardly runs
    private static bool StandsInAnswers(BarrelPoint[,] points, int i, int j)
    {
        for (var k = Math.Max(0, i - 1); k <= Math.Min(points.GetLength(0) - 1, i + 1); k++)
        {
            for (var l = Math.Max(0, j - 1); l <= Math.Min(points.GetLength(1) - 1, j + 1); l++)
            {
                if ((points[k, l].Validity & NoAnswer) != PointValidity.Inside)
                {
                    return false;
                }
            }
        }

        return true;
    }

    // To a hundredth, as shown: of places that read alike the one in the middle is taken
    private static double Beyond(BarrelPoint point, double degrees)
    {
        var target = MixtureTargets.At(degrees);
        return Math.Round(Math.Max(0, Math.Max(point.Lambda - target.Leanest, target.Richest - point.Lambda)), 2);
    }

    private static (int I, int J) Middle(IReadOnlyList<double> speeds, IReadOnlyList<double> openings)
    {
        var opening = openings.Count(d => d < (SmallestDegrees + LargestDegrees) / 2);
        return ((int)((SlowestPart + FastestPart) / 2 * (speeds.Count - 1)), Math.Min(opening, openings.Count - 1));
    }
}
