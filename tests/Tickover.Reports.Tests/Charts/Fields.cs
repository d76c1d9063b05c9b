using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

internal static class Fields
{
    /// <summary>A function on an even grid over −1 to 1 both ways.</summary>
    internal static Field Of(int columns, int rows, Func<double, double, double> value)
    {
        var grid = new Field(Refinement.Even(-1, 1, columns), Refinement.Even(-1, 1, rows), new double[columns, rows]);
        return grid.Map((i, j) => value(grid.Xs[i], grid.Ys[j]));
    }
}
