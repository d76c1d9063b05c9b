using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>Turns a yes or no on the coarse grid into a field whose zero line is a smooth border.</summary>
/// <remarks>
/// Where a computed figure tells yes from no (mean pressure the overrun, say), the border is where that figure crosses over.
/// Where none does, the steps of the grid are rounded off by averaging over one coarse cell.
/// </remarks>
internal static class SmoothFlag
{
    // Two passes of a box average make a tent, which rounds steps without corners of its own
    private const int Passes = 2;

    /// <summary>The field: zero or above where the flag holds, scaled to at most one either way.</summary>
    /// <param name="flags">1 where the flag holds, 0 where not, NaN where it cannot be said; by [x, y].</param>
    /// <param name="indicator">A figure that is larger where the flag holds; NaN where unknown.</param>
    /// <param name="fine">The grid wanted.</param>
    internal static Field Refine(Field flags, Field indicator, Field fine)
    {
        var known = flags.Values.Cast<double>().Where(f => !double.IsNaN(f)).ToArray();
        if (known.Length == 0 || known.All(f => f == known[0]))
        {
            var value = known.Length > 0 && known[0] > 0 ? 1 : -1;
            return fine.Map((_, _) => value);
        }

        return Threshold(flags, indicator) is { } threshold
            ? FromIndicator(indicator, threshold, fine)
            : FromSteps(flags, fine);
    }

    private static double? Threshold(Field flags, Field indicator)
    {
        var (lowestYes, highestNo) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < flags.Columns; i++)
        {
            for (var j = 0; j < flags.Rows; j++)
            {
                var (flag, value) = (flags.Values[i, j], indicator.Values[i, j]);
                lowestYes = flag > 0 && value < lowestYes ? value : lowestYes;
                highestNo = flag <= 0 && value > highestNo ? value : highestNo;
            }
        }

        return double.IsFinite(lowestYes + highestNo) && lowestYes > highestNo ? (lowestYes + highestNo) / 2 : null;
    }

    private static Field FromIndicator(Field indicator, double threshold, Field fine)
    {
        var signed = Refinement.WithoutGaps(indicator.Map((i, j) => indicator.Values[i, j] - threshold));
        var largest = signed.Values.Cast<double>().Max(Math.Abs);
        var scaled = signed.Map((i, j) => signed.Values[i, j] / largest);
        return Refinement.Refine(scaled, fine.Xs, fine.Ys);
    }

    private static Field FromSteps(Field flags, Field fine)
    {
        var signed = Refinement.WithoutGaps(flags.Map((i, j) => flags.Values[i, j] * 2 - 1));
        var field = Refinement.Refine(signed, fine.Xs, fine.Ys);
        var (across, down) = (Radius(fine.Columns, flags.Columns), Radius(fine.Rows, flags.Rows));
        for (var pass = 0; pass < Passes; pass++)
        {
            field = Averaged(field, across, down);
        }

        return field;
    }

    private static int Radius(int fine, int coarse) => coarse > 1 ? fine / (coarse - 1) / 2 : 0;

    private static Field Averaged(Field field, int across, int down)
    {
        var values = (double[,])field.Values.Clone();
        var line = new double[Math.Max(field.Columns, field.Rows)];
        for (var j = 0; j < field.Rows; j++)
        {
            for (var i = 0; i < field.Columns; i++)
            {
                line[i] = values[i, j];
            }

            var averaged = new RunningMean(line.AsSpan(0, field.Columns), across);
            for (var i = 0; i < field.Columns; i++)
            {
                values[i, j] = averaged.Next();
            }
        }

        for (var i = 0; i < field.Columns; i++)
        {
            for (var j = 0; j < field.Rows; j++)
            {
                line[j] = values[i, j];
            }

            var averaged = new RunningMean(line.AsSpan(0, field.Rows), down);
            for (var j = 0; j < field.Rows; j++)
            {
                values[i, j] = averaged.Next();
            }
        }

        return field with { Values = values };
    }

    /// <summary>Mean over a window that slides along a line; beyond the ends the end's value goes on.</summary>
    private ref struct RunningMean
    {
        private readonly ReadOnlySpan<double> _line;
        private readonly int _radius;
        private double _sum;
        private int _at;

        internal RunningMean(ReadOnlySpan<double> line, int radius)
        {
            _line = line;
            _radius = radius;
            for (var k = -radius; k <= radius; k++)
            {
                _sum += Value(k);
            }
        }

        internal double Next()
        {
            var mean = _sum / (2 * _radius + 1);
            _sum += Value(_at + _radius + 1) - Value(_at - _radius);
            _at++;
            return mean;
        }

        private readonly double Value(int index) => _line[Math.Clamp(index, 0, _line.Length - 1)];
    }
}
