namespace Tickover.Instruments.Logs.Text;

/// <summary>Finds separator, decimal mark, headings, units and the first figures in the beginning of a text.</summary>
internal static class TableFinder
{
    private const int MostRows = 1500;
    private const int SampleRows = 600;
    private const double FigureRow = 0.4;                // of the cells that hold anything: a row of figures may have marks and words in it
    private const double HeadingRow = 0.5;               // of the cells hold text
    private static readonly char[] Separators = [';', '\t', ',', '|'];

    /// <summary>Finds the table.</summary>
    /// <param name="head">The beginning of the text.</param>
    /// <returns>The shape; null where there is no table of figures.</returns>
    public static TableShape? Find(string head)
    {
        var best = Separators
            .Select(s => (Separator: s, Rows: RowSplitter.First(head, s, MostRows)))
            .Select(t => (t.Separator, t.Rows, Mark: DecimalMark.Of(t.Rows)))
            .Select(t => (t.Separator, t.Rows, t.Mark, Width: WidthOf(t.Rows, t.Mark)))
            .MaxBy(t => t.Width.Figures);
        return best.Width.Figures == 0 ? null : Shape(best.Rows, best.Separator, best.Mark, best.Width.Cells);
    }

    /// <summary>Whether a row, by its cells, is one of figures.</summary>
    /// <param name="row">The row.</param>
    /// <param name="mark">Decimal mark.</param>
    /// <returns>Whether it is.</returns>
    public static bool IsFigures(string[] row, char mark)
    {
        var figures = Figures(row, mark);
        return figures >= 2 && figures >= FigureRow * row.Count(c => c.Length > 0);
    }

    private static int Figures(string[] row, char mark) => row.Count(c => IsFigure(c, mark));

    private static bool IsFigure(string cell, char mark) =>
        CellNumber.Read(cell, mark, out _) == CellKind.Number || CellTime.TryRead(cell, out _);

    // The width that holds most figures: preamble lines with a figure or two do not count against a thousand rows.
    private static (int Cells, int Figures) WidthOf(List<string[]> rows, char mark)
    {
        var widths = rows.Where(r => r.Length >= 2 && IsFigures(r, mark))
            .GroupBy(r => r.Length)
            .Select(g => (Cells: g.Key, Figures: g.Sum(r => Figures(r, mark))))
            .ToList();
        return widths.Count == 0 ? (0, 0) : widths.MaxBy(w => w.Figures);
    }

    private static TableShape Shape(List<string[]> rows, char separator, char mark, int width)
    {
        var first = FirstFigures(rows, mark, width);
        var above = Enumerable.Range(0, first).Reverse().Where(i => IsHeading(rows[i], mark, width)).Take(2).ToArray();
        var units = above.Length == 2 && IsUnits(rows[above[0]]) ? above[0] : -1;
        var heading = above.Length == 0 ? -1 : units >= 0 ? above[1] : above[0];
        var cells = heading >= 0 ? Math.Max(rows[heading].Length, width) : width;
        return new TableShape
        {
            Separator = separator,
            Mark = mark,
            HeadingRow = heading,
            UnitsRow = units,
            FirstRow = first,
            Width = width,
            Headings = [.. Enumerable.Range(0, cells).Select(i => Cell(rows, heading, i) is { Length: > 0 } text ? text : $"#{i + 1}")],
            Units = [.. Enumerable.Range(0, cells).Select(i => Cell(rows, units, i))],
            Sample = [.. rows.Skip(first).Where(r => IsFigures(r, mark)).Take(SampleRows)],
        };
    }

    private static int FirstFigures(List<string[]> rows, char mark, int width)
    {
        var first = rows.FindIndex(r => r.Length >= width - 1 && r.Length <= width + 1 && IsFigures(r, mark));
        return first < 0 ? rows.FindIndex(r => IsFigures(r, mark)) : first;
    }

    private static bool IsHeading(string[] row, char mark, int width)
    {
        var filled = row.Count(c => c.Length > 0);
        return filled >= 2 && row.Length >= 0.5 * width && row.Count(c => c.Length > 0 && !IsFigure(c, mark)) >= HeadingRow * filled;
    }

    /// <summary>Whether a row holds units.</summary>
    internal static bool IsUnits(string[] row)
    {
        var filled = row.Where(c => c.Length > 0).ToArray();
        return filled.Length > 0 && filled.Count(LogUnits.IsUnit) >= 0.5 * filled.Length;
    }

    private static string Cell(List<string[]> rows, int row, int at) => row >= 0 && at < rows[row].Length ? rows[row][at] : string.Empty;
}
