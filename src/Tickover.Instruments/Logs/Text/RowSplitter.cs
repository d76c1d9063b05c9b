using nietras.SeparatedValues;

namespace Tickover.Instruments.Logs.Text;

/// <summary>Splits text into rows and cells; the library does it.</summary>
internal static class RowSplitter
{
    /// <summary>Opens a reader of rows that takes them as they are: no headings, any number of cells.</summary>
    /// <param name="text">The text, tidied.</param>
    /// <param name="separator">Between cells.</param>
    /// <returns>The reader.</returns>
    public static SepReader Open(LineTidier text, char separator) =>
        Sep.New(separator).Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = false, CreateToString = SepToString.Direct }).From(text);

    /// <summary>The first rows, as texts.</summary>
    /// <param name="text">The text.</param>
    /// <param name="separator">Between cells.</param>
    /// <param name="most">Most rows.</param>
    /// <returns>The rows.</returns>
    public static List<string[]> First(string text, char separator, int most)
    {
        using var tidy = new LineTidier(new StringReader(text));
        using var reader = Open(tidy, separator);
        var rows = new List<string[]>();
        foreach (var row in reader)
        {
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = CellNumber.Bare(row[i].Span).ToString();
            }

            rows.Add(cells);
            if (rows.Count == most)
            {
                break;
            }
        }

        return rows;
    }
}
