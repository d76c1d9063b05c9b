using System.Globalization;

namespace Tickover.Workshop.Gauges.Traces;

/// <summary>A table of numbers with a line of names: commas, semicolons or tabs.</summary>
internal sealed class TraceTable
{
    private readonly List<double[]> _rows = [];
    private readonly string[] _units;

    private TraceTable(string[] headings)
    {
        Names = [.. headings.Select(h => h.Split('(', '[')[0].Trim())];
        _units = [.. headings.Select(h => h.Contains('(', StringComparison.Ordinal) || h.Contains('[', StringComparison.Ordinal) ? h.Split('(', '[')[1].TrimEnd(')', ']', ' ') : "")];
    }

    public string[] Names { get; }

    public static TraceTable? Read(string text)
    {
        var lines = text.Split('\n').Select(l => l.Trim('\r', ' ', '\uFEFF')).Where(l => l.Length > 0 && !l.StartsWith('#')).ToArray();
        if (lines.Length < 2)
        {
            return null;
        }

        var mark = new[] { ';', '\t', ',' }.First(m => m == ',' || lines[0].Contains(m, StringComparison.Ordinal));
        var table = new TraceTable(lines[0].Split(mark));
        foreach (var cells in lines.Skip(1).Select(l => l.Split(mark)))
        {
            var row = cells.Select(c => Number(c, mark)).ToArray();
            if (row.Length != table.Names.Length || Array.Exists(row, v => !double.IsFinite(v)))
            {
                return null;
            }

            table._rows.Add(row);
        }

        return table;
    }

    public int? Find(string[] names)
    {
        foreach (var name in names)
        {
            var found = Array.FindIndex(Names, n => string.Equals(n.Replace('_', ' '), name.Replace('_', ' '), StringComparison.OrdinalIgnoreCase));
            if (found >= 0)
            {
                return found;
            }
        }

        return null;
    }

    public double[] Column(int index) => [.. _rows.Select(r => r[index])];

    public TraceUnit? Unit(int index) => _units[index].ToUpperInvariant() switch
    {
        "G" => TraceUnit.Gravities,
        "M/S2" or "M/S²" or "M/S^2" => TraceUnit.MetresPerSecondSquared,
        _ => null,
    };

    private static double Number(string cell, char mark) =>
        double.TryParse(mark == ',' ? cell : cell.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN;
}
