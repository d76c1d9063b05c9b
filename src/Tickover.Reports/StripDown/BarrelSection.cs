using Tickover.Reports.Charts;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Reports.StripDown;

/// <summary>One barrel cut through where it wears: choke, plate on its spindle, flange; clearance and light are drawn larger than they are.</summary>
internal static class BarrelSection
{
    private const double Top = 54;
    private const double Plate = 190;
    private const double Bottom = 236;
    private const double Bore = 30;                         // half of it
    private const double Wall = 20;
    private const double RingPerMillimetre = 45;
    private const double WidestRing = 8;

    /// <summary>Condition of a grade.</summary>
    internal static Condition ConditionOf(WearGrade grade) => grade switch
    {
        WearGrade.Good => Condition.Within,
        WearGrade.Usable => Condition.Watch,
        WearGrade.Worn => Condition.Soon,
        _ => Condition.Outside,
    };

    /// <summary>Draws it in its cell.</summary>
    internal static void Draw(IDrawing drawing, Box cell, WearBarrel barrel, IReadOnlyList<WearItem> own)
    {
        var (x, top) = (cell.Centre.X, cell.Top);
        drawing.Plate(new Box(x - Bore, top + Top, 2 * Bore, Bottom - Top), 0, new Look { Fill = Paint.Air, Opacity = 0.5 });
        var casing = new Look { Fill = Paint.Hatched(Hatch.Casing), Stroke = Paint.MetalEdge, Width = 1.6 };
        foreach (var side in new[] { -1, 1 })
        {
            drawing.Path([Wallof(x, top, side)], casing);
            drawing.Path([Choke(x, top, side)], new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 1.4 });
        }

        Throttle(drawing, (x, top + Plate), barrel);
        Flange(drawing, (x, top + Bottom), own.Any(i => i.Kind == WearKind.Flange));
        foreach (var worst in own.GroupBy(i => i.Kind).Select(g => g.MaxBy(i => i.Grade)!))
        {
            ConditionMark.Draw(drawing, Place(worst.Kind, x, top), 20, ConditionOf(worst.Grade));
        }
    }

    private static Polyline Wallof(double x, double top, int side) =>
        new([new(x + side * Bore, top + Top), new(x + side * (Bore + Wall), top + Top), new(x + side * (Bore + Wall), top + Bottom), new(x + side * Bore, top + Bottom)], Closed: true);

    private static Polyline Choke(double x, double top, int side) =>
        new([new(x + side * Bore, top + 78), new(x + side * (Bore - 9), top + 104), new(x + side * (Bore - 9), top + 112), new(x + side * Bore, top + 150)], Closed: true);

    private static void Throttle(IDrawing drawing, (double X, double Y) at, WearBarrel barrel)
    {
        var degrees = (barrel.Barrel.ClosedDegrees ?? 8) + (barrel.PlateDegrees ?? 0);
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var half = Bore - 1 - Math.Min(5, 40 * barrel.Barrel.LightGap * (barrel.Barrel.LightShare > 0 ? 1 : 0));
        ChartPoint Along(double along, double off) => new(at.X + along * cos + off * sin, at.Y - along * sin + off * cos);
        drawing.Path([new Polyline([Along(-half, -3), Along(half, -3), Along(half, 3), Along(-half, 3)], Closed: true)], new Look { Fill = Paint.MetalEdge, Stroke = Paint.MetalEdge, Width = 1 });
        if (barrel.Barrel.LightShare > 0)
        {
            foreach (var side in new[] { -1, 1 })
            {
                drawing.Line(new ChartPoint(at.X + side * (Bore - 3), at.Y - 16), new ChartPoint(at.X + side * (Bore - 3), at.Y + 18), new Look { Stroke = Paint.AirEdge, Width = 2.5, Dashes = (5, 3) });
            }
        }

        var clearance = barrel.Barrel.Bushes.Count > 0 ? barrel.Barrel.Bushes.Max(b => b.BushMillimetres - b.SpindleMillimetres) / 2 : 0;
        drawing.Circle(new ChartPoint(at.X, at.Y), 9 + Math.Min(WidestRing, RingPerMillimetre * clearance), new Look { Fill = Paint.Air, Stroke = Paint.MetalEdge, Width = 1.5 });
        drawing.Circle(new ChartPoint(at.X, at.Y), 9, new Look { Fill = Paint.Surface, Stroke = Paint.MetalEdge, Width = 3 });
    }

    private static void Flange(IDrawing drawing, (double X, double Y) at, bool isBowed)
    {
        var half = Bore + Wall + 4;
        var gap = isBowed ? 7 : 2;
        drawing.Path([new Polyline([new(at.X - half, at.Y + 2), new(at.X, at.Y + gap), new(at.X + half, at.Y + 2), new(at.X + half, at.Y + 10), new(at.X - half, at.Y + 10)], Closed: true)], new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 1.4 });
    }

    private static ChartPoint Place(WearKind kind, double x, double top) => kind switch
    {
        WearKind.Spindle => new(x, top + Plate),
        WearKind.Light => new(x - Bore + 2, top + Plate + 26),
        WearKind.Angle => new(x + Bore - 4, top + Plate - 24),
        WearKind.Bore => new(x + Bore + Wall / 2, top + Plate),
        WearKind.Flange => new(x + Bore + Wall - 4, top + Bottom + 2),
        WearKind.Needle => new(x - Bore - Wall / 2, top + 66),
        WearKind.Pump => new(x + Bore + Wall / 2, top + 72),
        WearKind.Tube => new(x - Bore - Wall / 2, top + 110),
        _ => new(x + Bore + Wall / 2, top + Plate + 30),
    };
}
