using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The map as a table: an opening a row, a speed a column.</summary>
internal static class MixtureTable
{
    internal static PictureTable For(MixtureMap map, BarrelMap barrel)
    {
        var grid = map.Grid;
        var columns = new List<string> { "Throttle" };
        columns.AddRange(grid.SpeedsRpm.Select(Shown.Speed));
        var rows = new List<IReadOnlyList<string>>();
        // Wide open on top, as on the drawing
        for (var j = grid.ThrottleDegrees.Count - 1; j >= 0; j--)
        {
            var row = new List<string> { Shown.Opening(grid.ThrottleDegrees[j]) };
            for (var i = 0; i < grid.SpeedsRpm.Count; i++)
            {
                row.Add(Cell(barrel.Points[i, j], grid.ThrottleDegrees[j]));
            }

            rows.Add(row);
        }

        return new PictureTable($"{MixtureSentence.Barrels(barrel)}: λ over engine speed in rpm, across, and throttle opening, down", columns, rows);
    }

    /// <summary>λ and whether it is outside the target, or why there is none.</summary>
    internal static string Cell(BarrelPoint point, double opening)
    {
        if (NoAnswer.Why(point) is { } reason)
        {
            return reason.ShortWords;
        }

        var target = MixtureTargets.At(opening);
        var verdict = point.Lambda > target.Leanest ? " lean" : point.Lambda < target.Richest ? " rich" : "";
        return Shown.Lambda(point.Lambda) + verdict;
    }
}
