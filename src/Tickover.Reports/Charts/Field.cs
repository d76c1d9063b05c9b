namespace Tickover.Reports.Charts;

/// <summary>Values over a rectangular grid of places; NaN where there is none.</summary>
/// <param name="Xs">Places across, rising or equal.</param>
/// <param name="Ys">Places down, rising or equal.</param>
/// <param name="Values">Values by [x, y].</param>
internal sealed record Field(double[] Xs, double[] Ys, double[,] Values)
{
    internal int Columns => Xs.Length;

    internal int Rows => Ys.Length;

    internal Field Map(Func<int, int, double> value)
    {
        var mapped = new double[Columns, Rows];
        for (var i = 0; i < Columns; i++)
        {
            for (var j = 0; j < Rows; j++)
            {
                mapped[i, j] = value(i, j);
            }
        }

        return this with { Values = mapped };
    }

    /// <summary>The field with a ring of one value round it at the same places, so that every area closes at the border.</summary>
    internal Field Ringed(double value)
    {
        double[] Widen(double[] places) => [places[0], .. places, places[^1]];
        var ringed = new double[Columns + 2, Rows + 2];
        for (var i = 0; i < Columns + 2; i++)
        {
            for (var j = 0; j < Rows + 2; j++)
            {
                var inside = i > 0 && j > 0 && i <= Columns && j <= Rows;
                ringed[i, j] = inside ? Values[i - 1, j - 1] : value;
            }
        }

        return new Field(Widen(Xs), Widen(Ys), ringed);
    }

    /// <summary>The value at a place by bilinear interpolation; NaN outside the grid.</summary>
    internal double At(ChartPoint place)
    {
        if (place.X < Xs[0] || place.X > Xs[^1] || place.Y < Ys[0] || place.Y > Ys[^1])
        {
            return double.NaN;
        }

        var (i, s) = Locate(Xs, place.X);
        var (j, t) = Locate(Ys, place.Y);
        var (i1, j1) = (Math.Min(i + 1, Columns - 1), Math.Min(j + 1, Rows - 1));
        return (1 - s) * ((1 - t) * Values[i, j] + t * Values[i, j1]) + s * ((1 - t) * Values[i1, j] + t * Values[i1, j1]);
    }

    private static (int Index, double Part) Locate(double[] places, double place)
    {
        var found = Array.BinarySearch(places, place);
        var index = found >= 0 ? found : Math.Max(0, ~found - 1);
        if (index >= places.Length - 1)
        {
            return (places.Length - 1, 0);
        }

        var width = places[index + 1] - places[index];
        return (index, width > 0 ? (place - places[index]) / width : 0);
    }
}
