using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Walks over a map's points.</summary>
internal static class BarrelMapPoints
{
    /// <summary>Every point once, without boxing each: points are large and many.</summary>
    internal static IEnumerable<BarrelPoint> AllPoints(this BarrelMap map)
    {
        for (var i = 0; i < map.Points.GetLength(0); i++)
        {
            for (var j = 0; j < map.Points.GetLength(1); j++)
            {
                yield return map.Points[i, j];
            }
        }
    }
}
