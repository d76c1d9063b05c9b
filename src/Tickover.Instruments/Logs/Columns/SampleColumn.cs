using Tickover.Instruments.Logs.Text;

namespace Tickover.Instruments.Logs.Columns;

/// <summary>One column over the first rows.</summary>
internal sealed record SampleColumn
{
    /// <summary>Cells with a figure.</summary>
    public required int Figures { get; init; }

    /// <summary>Cells with a time written out.</summary>
    public required int Clocks { get; init; }

    /// <summary>Whether it rises from row to row nearly always.</summary>
    public required bool Rises { get; init; }

    /// <summary>Different figures.</summary>
    public required int Distinct { get; init; }

    /// <summary>Median; NaN without figures.</summary>
    public required double Median { get; init; }

    /// <summary>Smallest; NaN without figures.</summary>
    public required double Least { get; init; }

    /// <summary>Largest; NaN without figures.</summary>
    public required double Most { get; init; }

    private const double Nearly = 0.9;

    /// <summary>Looks at a column.</summary>
    /// <param name="shape">The table.</param>
    /// <param name="index">The column from 0.</param>
    /// <returns>What it looks like.</returns>
    public static SampleColumn Of(TableShape shape, int index)
    {
        var (figures, clocks) = (new List<double>(), new List<double>());
        foreach (var row in shape.Sample.Where(r => index < r.Length))
        {
            if (CellNumber.Read(row[index], shape.Mark, out var figure) == CellKind.Number)
            {
                figures.Add(figure);
            }
            else if (CellTime.TryRead(row[index], out var clock))
            {
                clocks.Add(clock);
            }
        }

        var values = clocks.Count > figures.Count ? clocks : figures;
        var rising = values.Zip(values.Skip(1)).Count(p => p.Second >= p.First);
        var sorted = figures.Order().ToArray();
        return new SampleColumn
        {
            Figures = figures.Count,
            Clocks = clocks.Count,
            Rises = values.Count > 2 && rising >= Nearly * (values.Count - 1) && values[^1] > values[0],
            Distinct = values.Distinct().Count(),
            Median = sorted.Length == 0 ? double.NaN : sorted[sorted.Length / 2],
            Least = sorted.Length == 0 ? double.NaN : sorted[0],
            Most = sorted.Length == 0 ? double.NaN : sorted[^1],
        };
    }
}
