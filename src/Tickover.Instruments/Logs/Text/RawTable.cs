namespace Tickover.Instruments.Logs.Text;

/// <summary>The columns used, as figures of the file, and what became of its rows.</summary>
internal sealed class RawTable(int columns, int mostRows)
{
    private readonly float[] _sums = new float[columns];
    private readonly int[] _counts = new int[columns];
    private double[] _times = new double[1024];
    private int _inGroup;

    /// <summary>Time of each sample in the file's own unit.</summary>
    public Span<double> Times => _times.AsSpan(0, Count);

    /// <summary>The columns.</summary>
    public FigureList[] Columns { get; } = [.. Enumerable.Range(0, columns).Select(_ => new FigureList())];

    /// <summary>Samples.</summary>
    public int Count { get; private set; }

    /// <summary>Rows in one sample.</summary>
    public int RowsPerSample { get; private set; } = 1;

    /// <summary>Rows used.</summary>
    public long RowsKept { get; private set; }

    /// <summary>Adds a row.</summary>
    /// <param name="time">Its time.</param>
    /// <param name="figures">Its figures, NaN where missing.</param>
    public void Add(double time, ReadOnlySpan<float> figures)
    {
        RowsKept++;
        if (RowsPerSample == 1)
        {
            Append(time, figures);
            return;
        }

        if (_inGroup++ == 0)
        {
            AddTime(time);
        }

        for (var i = 0; i < figures.Length; i++)
        {
            if (!float.IsNaN(figures[i]))
            {
                _sums[i] += figures[i];
                _counts[i]++;
            }
        }

        if (_inGroup == RowsPerSample)
        {
            Close();
        }
    }

    /// <summary>Ends the last sample.</summary>
    public void Close()
    {
        if (_inGroup == 0)
        {
            return;
        }

        for (var i = 0; i < Columns.Length; i++)
        {
            Columns[i].Add(_counts[i] == 0 ? float.NaN : _sums[i] / _counts[i]);
        }

        Array.Clear(_sums);
        Array.Clear(_counts);
        _inGroup = 0;
        HalveIfFull();
    }

    private void Append(double time, ReadOnlySpan<float> figures)
    {
        AddTime(time);
        for (var i = 0; i < figures.Length; i++)
        {
            Columns[i].Add(figures[i]);
        }

        HalveIfFull();
    }

    private void AddTime(double time)
    {
        if (Count == _times.Length)
        {
            Array.Resize(ref _times, 2 * Count);
        }

        _times[Count++] = time;
    }

    private void HalveIfFull()
    {
        if (Count < mostRows)
        {
            return;
        }

        for (var i = 0; i < Count / 2; i++)
        {
            _times[i] = _times[2 * i];
        }

        Count /= 2;
        foreach (var column in Columns)
        {
            column.Halve();
        }

        RowsPerSample *= 2;
    }
}
