using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The map on a grid of half characters.</summary>
internal sealed class TerminalCells
{
    private readonly TerminalCell[,] _cells;
    private readonly MapFrame _frame;
    private readonly int _columns;
    private readonly int _rows;

    internal TerminalCells(MixtureMap map, BarrelMap barrel, int columns, int rows)
    {
        (_columns, _rows) = (columns, rows);
        _frame = MapFrame.For(map.Grid, PictureSize.Full);
        var field = new MapField(map, barrel, _frame, (columns, rows));
        Reasons = [.. field.Reasons];
        _cells = new TerminalCell[columns, rows];
        for (var i = 0; i < columns; i++)
        {
            for (var j = 0; j < rows; j++)
            {
                var beyond = Math.Max(0, field.TooLean.Values[i, j]) - Math.Max(0, field.TooRich.Values[i, j]);
                _cells[i, j] = field.HasAnswer(i, j)
                    ? new TerminalCell(field.Lambda.Values[i, j], beyond)
                    : new TerminalCell(double.NaN, 0);
            }
        }
    }

    internal IReadOnlyList<NoAnswer> Reasons { get; }

    internal TerminalCell this[int column, int row] => _cells[column, row];

    /// <summary>The sign of a character: + too lean, - too rich, / no answer, null within the target.</summary>
    internal char? SignAt(int column, int line)
    {
        var (upper, lower) = (_cells[column, 2 * line], _cells[column, 2 * line + 1]);
        if (!upper.HasAnswer || !lower.HasAnswer)
        {
            return '/';
        }

        return Math.Sign(upper.Beyond + lower.Beyond) switch { > 0 => '+', < 0 => '-', _ => null };
    }

    /// <summary>Whether a neighbouring character has another sign.</summary>
    internal bool IsEdge(int column, int line)
    {
        var own = SignAt(column, line);
        bool Differs(int c, int l) => c >= 0 && l >= 0 && c < _columns && 2 * l < _rows && SignAt(c, l) is var other && other != own && other != '/';
        return Differs(column - 1, line) || Differs(column + 1, line) || Differs(column, line - 1) || Differs(column, line + 1);
    }

    /// <summary>The opening at the middle of a line, for every third line; empty otherwise.</summary>
    internal string OpeningAt(int line)
    {
        const int every = 3;
        var part = (2 * line + 0.5) / (_rows - 1);
        var opening = _frame.Opening.ToValue(_frame.Plot.Top + part * _frame.Plot.Height);
        return line % every == 0 ? Shown.Opening(Math.Max(0, opening)) : "";
    }

    /// <summary>Speeds under their columns.</summary>
    internal string SpeedAxis()
    {
        var axis = new char[_columns + AxisTail];
        Array.Fill(axis, ' ');
        foreach (var rpm in Ticks.Nice(_frame.Speed.Values.From, _frame.Speed.Values.To, Math.Max(2, _columns / 12)))
        {
            var part = (_frame.Speed.ToPlace(rpm) - _frame.Plot.Left) / _frame.Plot.Width;
            var text = Shown.Speed(rpm);
            var start = Math.Max(0, (int)Math.Round(part * (_columns - 1)) - text.Length / 2);
            text.AsSpan(0, Math.Min(text.Length, axis.Length - start)).CopyTo(axis.AsSpan(start));
        }

        return new string(axis).TrimEnd() + " rpm";
    }

    private const int AxisTail = 3;
}
