namespace Tickover.Reports.Charts;

/// <summary>Brings a coarse field onto a finer grid, so that its contours are smooth.</summary>
internal static class Refinement
{
    /// <summary>Interpolates along x, then along y; never beyond the smallest and largest value of the coarse cells round about.</summary>
    /// <param name="coarse">A field without gaps: fill them first.</param>
    /// <param name="xs">Rising places across of the finer grid.</param>
    /// <param name="ys">Rising places down of the finer grid.</param>
    internal static Field Refine(Field coarse, double[] xs, double[] ys)
    {
        var across = new double[coarse.Rows, xs.Length];
        var line = new double[Math.Max(coarse.Columns, coarse.Rows)];
        var refined = new double[Math.Max(xs.Length, ys.Length)];
        for (var j = 0; j < coarse.Rows; j++)
        {
            for (var i = 0; i < coarse.Columns; i++)
            {
                line[i] = coarse.Values[i, j];
            }

            MonotoneCubic.Interpolate(coarse.Xs, line.AsSpan(0, coarse.Columns), xs, refined);
            for (var i = 0; i < xs.Length; i++)
            {
                across[j, i] = refined[i];
            }
        }

        var values = new double[xs.Length, ys.Length];
        for (var i = 0; i < xs.Length; i++)
        {
            for (var j = 0; j < coarse.Rows; j++)
            {
                line[j] = across[j, i];
            }

            MonotoneCubic.Interpolate(coarse.Ys, line.AsSpan(0, coarse.Rows), ys, refined);
            for (var j = 0; j < ys.Length; j++)
            {
                values[i, j] = refined[j];
            }
        }

        return new Field(xs, ys, values);
    }

    /// <summary>Evenly spaced places, ends included.</summary>
    internal static double[] Even(double from, double to, int count) =>
        [.. Enumerable.Range(0, count).Select(i => from + (to - from) * i / (count - 1))];

    /// <summary>Fills gaps from their nearest neighbours, ring by ring; zero where nothing at all is known.</summary>
    /// <remarks>The filled places lie outside what is drawn; they only keep the interpolation beside them quiet.</remarks>
    internal static Field WithoutGaps(Field field)
    {
        var values = (double[,])field.Values.Clone();
        while (true)
        {
            var found = RingOfNeighbours(field, values);
            if (found.Count == 0)
            {
                return field with { Values = values } is var filled && HasGap(values) ? filled.Map((_, _) => 0) : filled;
            }

            foreach (var (i, j, value) in found)
            {
                values[i, j] = value;
            }
        }
    }

    private static List<(int I, int J, double Value)> RingOfNeighbours(Field field, double[,] values)
    {
        var found = new List<(int, int, double)>();
        for (var i = 0; i < field.Columns; i++)
        {
            for (var j = 0; j < field.Rows; j++)
            {
                if (double.IsNaN(values[i, j]) && NeighbourMean(values, i, j) is { } mean)
                {
                    found.Add((i, j, mean));
                }
            }
        }

        return found;
    }

    private static double? NeighbourMean(double[,] values, int i, int j)
    {
        var (sum, count) = (0.0, 0);
        for (var di = -1; di <= 1; di++)
        {
            for (var dj = -1; dj <= 1; dj++)
            {
                var (ni, nj) = (i + di, j + dj);
                var inside = ni >= 0 && nj >= 0 && ni < values.GetLength(0) && nj < values.GetLength(1);
                if (inside && !double.IsNaN(values[ni, nj]))
                {
                    (sum, count) = (sum + values[ni, nj], count + 1);
                }
            }
        }

        return count > 0 ? sum / count : null;
    }

    private static bool HasGap(double[,] values) => values.Cast<double>().Any(double.IsNaN);
}
