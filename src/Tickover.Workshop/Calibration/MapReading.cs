using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>Reads a map between its speeds and openings.</summary>
internal static class MapReading
{
    /// <summary>Where a value lies among rising ones: the one below, and the part of the way to the next. Outside, the outermost holds.</summary>
    internal static (int Below, double Part) Between(IReadOnlyList<double> rising, double value)
    {
        var below = 0;
        while (below < rising.Count - 2 && rising[below + 1] <= value)
        {
            below++;
        }

        return rising.Count < 2 ? (0, 0) : (below, Math.Clamp((value - rising[below]) / (rising[below + 1] - rising[below]), 0, 1));
    }

    /// <summary>λ as its logarithm, read between the points of a map of equivalence.</summary>
    internal static double LogLambda(double[,,] equivalence, SurveyGrid grid, int bank, double rpm, double degrees)
    {
        var (i, x) = Between(grid.SpeedsRpm, rpm);
        var (j, y) = Between(grid.ThrottleDegrees, degrees);
        var (p, q) = (Math.Min(i + 1, grid.SpeedsRpm.Count - 1), Math.Min(j + 1, grid.ThrottleDegrees.Count - 1));
        var low = (1 - y) * Math.Log(equivalence[bank, i, j]) + y * Math.Log(equivalence[bank, i, q]);
        var high = (1 - y) * Math.Log(equivalence[bank, p, j]) + y * Math.Log(equivalence[bank, p, q]);
        return -((1 - x) * low + x * high);
    }

    /// <summary>The opening at which a pressure stands behind the plate at a speed, degrees; null where none does.</summary>
    internal static double? Opening(double[,] pressure, SurveyGrid grid, double rpm, double pascals)
    {
        var (i, x) = Between(grid.SpeedsRpm, rpm);
        var p = Math.Min(i + 1, grid.SpeedsRpm.Count - 1);
        double At(int j) => (1 - x) * pressure[i, j] + x * pressure[p, j];
        for (var j = 1; j < grid.ThrottleDegrees.Count; j++)
        {
            var (low, high) = (At(j - 1), At(j));
            if (pascals >= low && pascals < high)
            {
                return grid.ThrottleDegrees[j - 1] + (pascals - low) / (high - low) * (grid.ThrottleDegrees[j] - grid.ThrottleDegrees[j - 1]);
            }
        }

        return null;
    }
}
