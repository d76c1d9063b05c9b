using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.StripDown;

/// <summary>Places of a set side by side in engine order, in as many rows as it takes.</summary>
internal sealed class SetColumns
{
    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double Narrowest = 112;
    private const double Widest = 250;
    private readonly int _each;
    private readonly double _rowHeight;

    internal SetColumns(int count, PictureSize size, double rowHeight)
    {
        Width = size is PictureSize.Phone ? PhoneWidth : FullWidth;
        var most = Math.Max(1, (int)(Width / Narrowest));
        Rows = (count + most - 1) / most;
        _each = (count + Rows - 1) / Rows;
        _rowHeight = rowHeight;
    }

    /// <summary>Width of the drawing.</summary>
    internal double Width { get; }

    /// <summary>How many rows.</summary>
    internal int Rows { get; }

    /// <summary>Height of all rows.</summary>
    internal double Height => Rows * _rowHeight;

    /// <summary>Row of a place.</summary>
    internal int RowOf(int index) => index / _each;

    /// <summary>The box of a place.</summary>
    internal Box Of(int index)
    {
        var width = Math.Min(Widest, Width / _each);
        return new Box((index % _each) * width, RowOf(index) * _rowHeight, width, _rowHeight);
    }

    /// <summary>Left and right end of a row that holds so many places.</summary>
    internal (double Left, double Right) Row(int row, int count)
    {
        var last = Math.Min(count, (row + 1) * _each) - 1;
        return (Of(row * _each).Left, Of(last).Right);
    }
}
