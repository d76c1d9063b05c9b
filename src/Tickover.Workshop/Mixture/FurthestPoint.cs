namespace Tickover.Workshop.Mixture;

/// <summary>The place on a barrel's map that lies furthest from target: where to look first.</summary>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="ThrottleDegrees">Plate opening from seated, degrees.</param>
/// <param name="Beyond">How far λ lies beyond the target there: above zero too lean, below too rich, zero within.</param>
public sealed record FurthestPoint(double SpeedRpm, double ThrottleDegrees, double Beyond)
{
    private const PointValidity NoAnswer = PointValidity.Overrun | PointValidity.NoAir | PointValidity.NoFuel | PointValidity.NotSettled
        | PointValidity.BeyondRatedSpeed | PointValidity.TooLeanToRun | PointValidity.TooRichToRun;

    /// <summary>Finds the place.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">Barrel from 1.</param>
    /// <returns>The place; the middle of the map where nothing lies beyond target.</returns>
    public static FurthestPoint Of(MixtureMap map, int barrelNumber)
    {
        ArgumentNullException.ThrowIfNull(map);
        var (grid, points) = (map.Grid, map.ForBarrel(barrelNumber).Points);
        var furthest = new FurthestPoint(grid.SpeedsRpm[grid.SpeedsRpm.Count / 2], grid.ThrottleDegrees[grid.ThrottleDegrees.Count / 2], 0);
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                var beyond = BeyondTarget(points[i, j], MixtureTargets.At(grid.ThrottleDegrees[j]));
                if (Math.Abs(beyond) > Math.Abs(furthest.Beyond))
                {
                    furthest = new FurthestPoint(grid.SpeedsRpm[i], grid.ThrottleDegrees[j], beyond);
                }
            }
        }

        return furthest;
    }

    private static double BeyondTarget(BarrelPoint point, LambdaBand target) => (point.Validity & NoAnswer) != PointValidity.Inside
        ? 0
        : Math.Max(0, point.Lambda - target.Leanest) + Math.Min(0, point.Lambda - target.Richest);
}
