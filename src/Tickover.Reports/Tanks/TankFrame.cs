using Tickover.Physics.Linkages;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Reports.Tanks;

/// <summary>Where things stand in the picture of tanks: from behind, from the side at the same scale, and the strapping curve.</summary>
internal sealed class TankFrame
{
    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double Heading = 34;
    private const double Foot = 46;          // pipe and words under the tanks
    private const double Gap = 44;           // between the two views
    private const double Edge = 12;
    private const double TallestFull = 230;
    private const double TallestPhone = 180;
    private const double ChartLeft = 48;
    private const double ChartHeight = 190;
    private const double AxisHeight = 44;

    private readonly double _scale;
    private readonly SpaceVector _low;
    private readonly SpaceVector _high;
    private readonly double _sideTop;

    internal TankFrame(TankView view)
    {
        var set = view.Analysis.Set;
        IsPhone = view.Size is PictureSize.Phone;
        Width = IsPhone ? PhoneWidth : FullWidth;
        (_low, _high) = (set.Joined!.Lowest, set.Joined.Highest);
        Beside = set.Tanks.FirstOrDefault(t => t.PickUp is not null) ?? set.Tanks[0];
        var (wide, tall, along) = (_high.Y - _low.Y, _high.Z - _low.Z, Beside.Shape.Highest.X - Beside.Shape.Lowest.X);
        var room = Width - 2 * Edge - (IsPhone ? 0 : Gap);
        _scale = Math.Min((IsPhone ? TallestPhone : TallestFull) / tall, room / (IsPhone ? Math.Max(wide, along) : wide + along));
        var height = tall * _scale;
        Rear = new Box(Edge, Heading, wide * _scale, height);
        _sideTop = IsPhone ? Rear.Bottom + Foot + Heading : Heading;
        Side = new Box(IsPhone ? Edge : Rear.Right + Gap, _sideTop, along * _scale, height);
        Chart = new Box(ChartLeft, Side.Bottom + Foot + Heading, Width - ChartLeft - Edge, ChartHeight);
        Height = Chart.Bottom + AxisHeight;
    }

    internal bool IsPhone { get; }

    internal double Width { get; }

    internal double Height { get; }

    /// <summary>The tank seen from the side: the one with the pick-up.</summary>
    internal TankPart Beside { get; }

    /// <summary>All tanks from behind.</summary>
    internal Box Rear { get; }

    /// <summary>One of them from the left.</summary>
    internal Box Side { get; }

    /// <summary>The strapping curve.</summary>
    internal Box Chart { get; }

    /// <summary>From behind: the car's left at the left.</summary>
    internal ChartPoint FromBehind(SpaceVector p) => new(Rear.Left + (_high.Y - p.Y) * _scale, Rear.Bottom - (p.Z - _low.Z) * _scale);

    /// <summary>From the left side: the front at the left.</summary>
    internal ChartPoint FromSide(SpaceVector p) => new(Side.Left + (Beside.Shape.Highest.X - p.X) * _scale, Side.Bottom - (p.Z - _low.Z) * _scale);
}
