using System.Text;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>λ at some speeds and openings as columns of text.</summary>
internal static class TerminalTable
{
    private const int HeadWidth = 9;
    private const int ColumnWidth = 8;
    private const int MostRows = 9;

    internal static void Append(StringBuilder text, MixtureMap map, BarrelMap barrel, int width)
    {
        var grid = map.Grid;
        var speeds = Spread(grid.SpeedsRpm.Count, Math.Max(2, (width - HeadWidth) / ColumnWidth));
        var openings = Spread(grid.ThrottleDegrees.Count, MostRows);
        text.Append("throttle".PadRight(HeadWidth));
        foreach (var i in speeds)
        {
            text.Append(Shown.Speed(grid.SpeedsRpm[i]).PadLeft(ColumnWidth - 1)).Append(' ');
        }

        text.Append("rpm\n");
        foreach (var j in openings.Reverse())
        {
            text.Append(Shown.Opening(grid.ThrottleDegrees[j]).PadLeft(HeadWidth - 2).PadRight(HeadWidth));
            foreach (var i in speeds)
            {
                text.Append(Cell(barrel.Points[i, j], grid.ThrottleDegrees[j]).PadLeft(ColumnWidth));
            }

            text.Append('\n');
        }
    }

    // The sign keeps its own column, so that the points of the figures stand under each other
    private static string Cell(BarrelPoint point, double opening)
    {
        if (!NoAnswer.HasAnswer(point))
        {
            return "/ ";
        }

        var target = MixtureTargets.At(opening);
        var sign = point.Lambda > target.Leanest ? '+' : point.Lambda < target.Richest ? '-' : ' ';
        return Shown.Lambda(point.Lambda) + sign;
    }

    private static int[] Spread(int count, int most)
    {
        var wanted = Math.Min(count, most);
        return wanted <= 1 ? [0] : [.. Enumerable.Range(0, wanted).Select(k => (int)Math.Round((double)k * (count - 1) / (wanted - 1))).Distinct()];
    }
}
