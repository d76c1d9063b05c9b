using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>Where the parts of the wall map stand. On a phone a wide wall is turned a quarter, so that its cells are wide enough for a finger.</summary>
internal sealed class WallFrame
{
    private const double FullWidth = 772, PhoneWidth = 366;
    private const double TallestFull = 520, TallestPhone = 900;
    private const double Side = 34, Top = 30, LegendHeight = 40, PhoneLegendHeight = 94;

    private readonly double _scale;
    private readonly WallBox _box;
    private readonly ChartPoint _corner;

    internal WallFrame(WallView view)
    {
        var cells = view.Survey.Cells.Select(c => c.Box).ToArray();
        _box = new WallBox(cells.Min(b => b.Left), cells.Min(b => b.Bottom), cells.Max(b => b.Right), cells.Max(b => b.Top));
        var (wide, tall) = (_box.Right - _box.Left, _box.Top - _box.Bottom);
        IsPhone = view.Size is PictureSize.Phone;
        IsTurned = IsPhone && wide > tall;
        (wide, tall) = IsTurned ? (tall, wide) : (wide, tall);
        Width = IsPhone ? PhoneWidth : FullWidth;
        _scale = Math.Min((Width - 2 * Side) / wide, (IsPhone ? TallestPhone : TallestFull) / tall);
        _corner = new ChartPoint((Width - wide * _scale) / 2, Top);
        Map = new Box(_corner.X, Top, wide * _scale, tall * _scale);
        Legend = new Box(Side, Map.Bottom + (IsTurned ? 40 : 16), Width - 2 * Side, IsPhone ? PhoneLegendHeight : LegendHeight);
        Height = Legend.Bottom;
    }

    internal bool IsPhone { get; }

    /// <summary>Whether the left edge is drawn at the top.</summary>
    internal bool IsTurned { get; }

    internal double Width { get; }

    internal double Height { get; }

    internal Box Map { get; }

    internal Box Legend { get; }

    internal ChartPoint At(WallPoint point) => IsTurned
        ? new ChartPoint(_corner.X + (point.Up - _box.Bottom) * _scale, _corner.Y + (point.Right - _box.Left) * _scale)
        : new ChartPoint(_corner.X + (point.Right - _box.Left) * _scale, _corner.Y + (_box.Top - point.Up) * _scale);

    internal Box At(WallBox box)
    {
        var (a, b) = (At(new WallPoint(box.Left, box.Bottom)), At(new WallPoint(box.Right, box.Top)));
        return new Box(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
    }
}
