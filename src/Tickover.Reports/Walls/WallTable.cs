using System.Globalization;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>The chance of a hole as a table, for those who do not see the band.</summary>
public static class WallTable
{
    private static readonly double[] Years = [0, 1, 2, 3, 5, 7, 10, 15, 20];

    /// <summary>Makes the table.</summary>
    /// <param name="analysis">The survey; its course is not empty.</param>
    /// <returns>The table.</returns>
    public static PictureTable OfYears(WallAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return new PictureTable(
            "Chance of a hole anywhere over the years",
            ["Years from now", "Slow", "Between", "Fast"],
            [.. Years.Select(y => (Year: y, Chance: analysis.At(y)!.Value)).Select(c => (IReadOnlyList<string>)
            [
                c.Year.ToString(CultureInfo.InvariantCulture), WallFigures.Chance(c.Chance.Low), WallFigures.Chance(c.Chance.Middle), WallFigures.Chance(c.Chance.High),
            ])]);
    }
}
