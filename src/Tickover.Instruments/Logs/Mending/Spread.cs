namespace Tickover.Instruments.Logs.Mending;

/// <summary>Where the figures of a column lie, its strays left out.</summary>
/// <param name="Low">2nd percentile.</param>
/// <param name="Median">Median.</param>
/// <param name="High">98th percentile.</param>
/// <param name="Count">Figures looked at.</param>
internal readonly record struct Spread(double Low, double Median, double High, int Count)
{
    private const int Most = 20_000;
    private const double Tail = 0.02;

    /// <summary>Looks at a column, at some 20 000 of its figures.</summary>
    /// <param name="figures">The figures; NaN is missing.</param>
    /// <returns>The spread; NaN where nothing is there.</returns>
    public static Spread Of(ReadOnlySpan<float> figures)
    {
        var stride = Math.Max(1, figures.Length / Most);
        var seen = new List<float>(Math.Min(figures.Length, Most + 1));
        for (var i = 0; i < figures.Length; i += stride)
        {
            if (float.IsFinite(figures[i]))
            {
                seen.Add(figures[i]);
            }
        }

        if (seen.Count == 0)
        {
            return new(double.NaN, double.NaN, double.NaN, 0);
        }

        seen.Sort();
        return new(seen[(int)(Tail * (seen.Count - 1))], seen[seen.Count / 2], seen[(int)((1 - Tail) * (seen.Count - 1))], seen.Count);
    }

    /// <summary>Whether nothing moves.</summary>
    public bool Still => !(High > Low);

    /// <summary>The spread in a unit's SI.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="barometer">Pressure outside, Pa.</param>
    /// <returns>Low to high, whichever way the unit turns it.</returns>
    public Spread In(LogUnit unit, double barometer)
    {
        var (a, b) = (unit.ToSi(Low, barometer), unit.ToSi(High, barometer));
        return this with { Low = Math.Min(a, b), Median = unit.ToSi(Median, barometer), High = Math.Max(a, b) };
    }
}
