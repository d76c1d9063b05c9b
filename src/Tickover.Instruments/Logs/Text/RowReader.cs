using Tickover.Instruments.Logs.Columns;
using nietras.SeparatedValues;

namespace Tickover.Instruments.Logs.Text;

/// <summary>Goes through the rows once and keeps the figures of the columns used.</summary>
internal sealed class RowReader(TableShape shape, IReadOnlyList<ColumnChoice> columns, LogReadingSettings settings)
{
    private const int BetweenReports = 1 << 14;

    private readonly int _time = columns.FirstOrDefault(c => c.Quantity is LogQuantity.Time)?.Index ?? -1;
    private readonly int[] _used = [.. columns.Where(c => c.Quantity is not (LogQuantity.Ignored or LogQuantity.Time)).Select(c => c.Index)];
    private readonly bool[] _needed = [.. columns.Where(c => c.Quantity is not (LogQuantity.Ignored or LogQuantity.Time)).Select(c => c.Quantity is LogQuantity.EngineSpeed or LogQuantity.Lambda)];
    // The last of the columns without which a row says nothing; loggers leave empty cells at the end away.
    private readonly int _last = columns.Where(c => c.Quantity is LogQuantity.Time or LogQuantity.EngineSpeed or LogQuantity.Lambda or LogQuantity.Throttle or LogQuantity.ManifoldPressure).Select(c => c.Index).DefaultIfEmpty(0).Max();
    private readonly long[] _fates = new long[Enum.GetValues<RowFate>().Length];
    private bool _clock;

    /// <summary>Rows after the headings.</summary>
    public long Rows { get; private set; }

    /// <summary>Line at which another table begins, from 1; 0 where none does.</summary>
    public long AnotherTableAt { get; private set; }

    /// <summary>Columns of <see cref="RawTable.Columns"/> by their place in the row.</summary>
    public IReadOnlyList<int> Used => _used;

    /// <summary>Number of rows with a fate.</summary>
    /// <param name="fate">The fate.</param>
    /// <returns>The number.</returns>
    public long Of(RowFate fate) => _fates[(int)fate];

    /// <summary>Reads all rows.</summary>
    /// <param name="reader">The reader.</param>
    /// <param name="clock">Whether times are written out.</param>
    /// <param name="report">Told every so many rows.</param>
    /// <param name="cancellation">Stops.</param>
    /// <returns>The figures.</returns>
    public RawTable Read(SepReader reader, bool clock, Action<long> report, CancellationToken cancellation)
    {
        _clock = clock;
        var table = new RawTable(_used.Length, settings.MostRows);
        var figures = new float[_used.Length];
        long row = -1;
        foreach (var cells in reader)
        {
            if (++row < shape.FirstRow)
            {
                continue;
            }

            if ((++Rows & (BetweenReports - 1)) == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                report(Rows);
            }

            var fate = Take(cells, figures, out var time);
            _fates[(int)fate]++;
            if (fate == RowFate.Kept)
            {
                table.Add(time, figures);
            }
            else if (fate == RowFate.AnotherTable)
            {
                AnotherTableAt = row + 1;
                break;
            }
        }

        table.Close();
        return table;
    }

    private RowFate Take(SepReader.Row cells, float[] figures, out double time)
    {
        time = double.NaN;
        if (cells.ColCount <= _last && cells.ColCount < shape.Width)
        {
            return Why(cells, timed: false);
        }

        var some = false;
        for (var i = 0; i < figures.Length; i++)
        {
            figures[i] = _used[i] < cells.ColCount && CellNumber.Read(cells[_used[i]].Span, shape.Mark, out var figure) == CellKind.Number ? (float)figure : float.NaN;
            some |= _needed[i] && !float.IsNaN(figures[i]);
        }

        var timed = TakeTime(cells, out time);
        return some && timed ? RowFate.Kept : Why(cells, timed);
    }

    private bool TakeTime(SepReader.Row cells, out double time)
    {
        if (_time < 0)
        {
            time = Rows - 1;
            return true;
        }

        time = double.NaN;
        return _time < cells.ColCount
            && (_clock ? CellTime.TryRead(cells[_time].Span, out time) : CellNumber.Read(cells[_time].Span, shape.Mark, out time) == CellKind.Number);
    }

    private RowFate Why(SepReader.Row row, bool timed)
    {
        var cells = new string[row.ColCount];
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i] = CellNumber.Bare(row[i].Span).ToString();
        }

        if (cells.All(c => c.Length == 0))
        {
            return RowFate.Blank;
        }

        if (cells[0] is ['#' or '!' or '%', ..] or ['/', '/', ..])
        {
            return RowFate.Comment;
        }

        var words = OfWords(cells);
        var cut = cells.Length < shape.Width && cells.Length <= _last;
        return words != RowFate.Kept ? words : cut ? RowFate.CutShort : timed ? RowFate.NoFigures : RowFate.NoTime;
    }

    private RowFate OfWords(string[] cells)
    {
        var alike = cells.Zip(shape.Headings).Count(p => p.First.Length > 0 && string.Equals(p.First, p.Second, StringComparison.OrdinalIgnoreCase));
        var filled = cells.Count(c => c.Length > 0);
        if (alike >= 0.6 * filled)
        {
            return RowFate.HeadingsAgain;
        }

        if (TableFinder.IsFigures(cells, shape.Mark))
        {
            return RowFate.Kept;
        }

        if (shape.UnitsRow >= 0 && filled >= 2 && TableFinder.IsUnits(cells))
        {
            return RowFate.UnitsAgain;
        }

        var words = cells.Count(c => c.Length > 0 && CellNumber.Read(c, shape.Mark, out _) == CellKind.Text);
        if (words < 0.5 * filled || words == 0)
        {
            return RowFate.Kept;
        }

        return filled >= 3 && cells.Any(c => HeadingWords.Find(HeadingText.Of(c, string.Empty)) is LogQuantity.EngineSpeed) ? RowFate.AnotherTable : RowFate.Words;
    }
}
