namespace Tickover.Workshop.Mixture;

/// <summary>The place on a barrel's map that lies furthest from target: where to look first.</summary>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="ThrottleDegrees">Plate opening from seated, degrees.</param>
/// <param name="Beyond">How far λ lies beyond the target there: above zero too lean, below too rich, zero within.</param>
public sealed record FurthestPoint(double SpeedRpm, double ThrottleDegrees, double Beyond)
{
    private const PointValidity NoAnswer = PointValidity.Overrun | PointValidity.NoAir | PointValidity.NoFuel | PointValidity.NotSettled
        | PointValidity.BeyondRatedSpeed | PointValidity.TooLeanToRun | PointValidity.TooRichToRun;

    // Neighbours on the grid that count with a point: the middle of a wide region is worth a look before a ragged corner.
    private const int Reach = 2;

    /// <summary>Finds the place: the heart of the region that lies furthest from target, taken over a point and its neighbours.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">Barrel from 1.</param>
    /// <returns>The place; the middle of the map where nothing lies beyond target.</returns>
    public static FurthestPoint Of(MixtureMap map, int barrelNumber)
    {
        ArgumentNullException.ThrowIfNull(map);
        var grid = map.Grid;
        var beyond = Beyonds(grid, map.ForBarrel(barrelNumber));
        var (best, most) = ((I: grid.SpeedsRpm.Count / 2, J: grid.ThrottleDegrees.Count / 2), 0.0);
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                var here = Around(beyond, i, j);
                if (here > most)
                {
                    (best, most) = ((i, j), here);
                }
            }
        }

        return new FurthestPoint(grid.SpeedsRpm[best.I], grid.ThrottleDegrees[best.J], beyond[best.I, best.J]);
    }

    private static double[,] Beyonds(SurveyGrid grid, BarrelMap barrel)
    {
        var beyond = new double[grid.SpeedsRpm.Count, grid.ThrottleDegrees.Count];
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                beyond[i, j] = BeyondTarget(barrel.Points[i, j], MixtureTargets.At(grid.ThrottleDegrees[j]));
            }
        }

        return beyond;
    }

    // What lies on the other side of the target near by does not weigh for this side.
    private static double Around(double[,] beyond, int i, int j)
    {
        var sum = 0.0;
        for (var k = Math.Max(0, i - Reach); k <= Math.Min(beyond.GetLength(0) - 1, i + Reach); k++)
        {
            for (var l = Math.Max(0, j - Reach); l <= Math.Min(beyond.GetLength(1) - 1, j + Reach); l++)
            {
                sum += Math.Max(0, Math.Sign(beyond[i, j]) * beyond[k, l]);
            }
        }

        return sum;
    }

    private static double BeyondTarget(BarrelPoint point, LambdaBand target) => (point.Validity & NoAnswer) != PointValidity.Inside
        ? 0
        : Math.Max(0, point.Lambda - target.Leanest) + Math.Min(0, point.Lambda - target.Richest);
}
