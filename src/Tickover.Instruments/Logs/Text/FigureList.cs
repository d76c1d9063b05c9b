namespace Tickover.Instruments.Logs.Text;

/// <summary>A growing column of figures that can be halved by averaging neighbours.</summary>
internal sealed class FigureList
{
    private float[] _figures = new float[1024];

    /// <summary>How many.</summary>
    public int Count { get; private set; }

    /// <summary>The figures.</summary>
    public Span<float> Figures => _figures.AsSpan(0, Count);

    /// <summary>Adds one.</summary>
    /// <param name="figure">The figure; NaN where it is missing.</param>
    public void Add(float figure)
    {
        if (Count == _figures.Length)
        {
            Array.Resize(ref _figures, 2 * Count);
        }

        _figures[Count++] = figure;
    }

    /// <summary>Averages each pair of neighbours; a missing one does not count.</summary>
    public void Halve()
    {
        for (var i = 0; i < Count / 2; i++)
        {
            var (a, b) = (_figures[2 * i], _figures[2 * i + 1]);
            _figures[i] = float.IsNaN(a) ? b : float.IsNaN(b) ? a : (a + b) / 2;
        }

        Count /= 2;
    }
}
