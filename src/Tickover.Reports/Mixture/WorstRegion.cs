using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The connected part of the map that is furthest from the target, all its points taken together.</summary>
internal sealed record WorstRegion(bool IsLean, double SlowestRpm, double FastestRpm, double SmallestOpening, double LargestOpening)
{
    internal static WorstRegion? Find(SurveyGrid grid, BarrelMap barrel)
    {
        var beyond = Beyond(grid, barrel);
        var seen = new bool[beyond.GetLength(0), beyond.GetLength(1)];
        (double Weight, List<(int I, int J)> Points)? worst = null;
        for (var i = 0; i < seen.GetLength(0); i++)
        {
            for (var j = 0; j < seen.GetLength(1); j++)
            {
                var region = Collect(beyond, seen, i, j);
                var weight = region.Sum(p => Math.Abs(beyond[p.I, p.J]));
                worst = weight > (worst?.Weight ?? 0) ? (weight, region) : worst;
            }
        }

        return worst is not var (_, points) ? null : new WorstRegion(
            beyond[points[0].I, points[0].J] > 0,
            points.Min(p => grid.SpeedsRpm[p.I]), points.Max(p => grid.SpeedsRpm[p.I]),
            points.Min(p => grid.ThrottleDegrees[p.J]), points.Max(p => grid.ThrottleDegrees[p.J]));
    }

    // How far λ lies beyond the target: above zero too lean, below too rich
    private static double[,] Beyond(SurveyGrid grid, BarrelMap barrel)
    {
        var beyond = new double[grid.SpeedsRpm.Count, grid.ThrottleDegrees.Count];
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                var (point, target) = (barrel.Points[i, j], MixtureTargets.At(grid.ThrottleDegrees[j]));
                beyond[i, j] = !NoAnswer.HasAnswer(point) ? 0
                    : Math.Max(0, point.Lambda - target.Leanest) + Math.Min(0, point.Lambda - target.Richest);
            }
        }

        return beyond;
    }

    private static List<(int I, int J)> Collect(double[,] beyond, bool[,] seen, int i, int j)
    {
        var region = new List<(int, int)>();
        var open = new Stack<(int I, int J)>();
        var sign = Math.Sign(beyond[i, j]);
        open.Push((i, j));
        while (sign != 0 && open.TryPop(out var p))
        {
            var inside = p.I >= 0 && p.J >= 0 && p.I < seen.GetLength(0) && p.J < seen.GetLength(1);
            if (!inside || seen[p.I, p.J] || Math.Sign(beyond[p.I, p.J]) != sign)
            {
                continue;
            }

            seen[p.I, p.J] = true;
            region.Add(p);
            open.Push((p.I + 1, p.J));
            open.Push((p.I - 1, p.J));
            open.Push((p.I, p.J + 1));
            open.Push((p.I, p.J - 1));
        }

        return region;
    }
}
