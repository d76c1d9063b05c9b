using Tickover.Reports.Charts;
using static Tickover.Reports.Section.SectionGeometry;

namespace Tickover.Reports.Section;

/// <summary>Where each part's name stands and what its line points at.</summary>
internal static class SectionLabels
{
    private const double RightX = 692;
    private const double LeftX = 236;
    // Shown at 0.896 of its units: 54 becomes 48 px
    private const double TouchSize = 54;

    // Number on the phone's drawing, which is shown at 366 / 640 of its units: 26 becomes 15 px
    private const double NumberRadius = 24;
    private const double NumberSize = 26;
    private const double NumberTouch = 84;

    /// <summary>The place on the part that its line ends at.</summary>
    internal static ChartPoint Target(string key, SectionGeometry at) => key switch
    {
        PartKeys.AirCorrector => new(WellCentre - 8, 174),
        PartKeys.EmulsionHoles => new(WellCentre - 8, 206),
        PartKeys.MainJet => new(WellCentre - 12, at.JetTop + 11),
        PartKeys.FloatLevel => new(82, at.LevelY),
        PartKeys.IdleBleed => new(IdleX + 8, 111),
        PartKeys.PumpJet => new(WallRight - 10, 141),
        PartKeys.IdleJet => new(IdleX + 8, 262),
        PartKeys.Nozzle => new(BoreCentre + AirWayDrawing.OuterHalf(at) - 5, 244),
        PartKeys.Choke => new(WallRight - Math.Max(3, (BoreHalf - at.ThroatHalf) / 2), 292),
        PartKeys.ProgressionHoles => new(WallRight + 12, at.HoleY(0.002)),
        PartKeys.ThrottleBore => new(BoreCentre + at.PlateReach * 0.6 * Math.Cos(at.PlateAngle), SpindleY - at.PlateReach * 0.6 * Math.Sin(at.PlateAngle)),
        _ => new(652, ScrewY),
    };

    internal static void Named(IDrawing drawing, SectionPart part, SectionGeometry at)
    {
        var target = Target(part.Key, at);
        var (start, anchor, elbow) = Stand(part.Key, at);
        var paint = part.Selected ? Paint.Mark : Paint.Ink;
        var leader = Shapes.Open(elbow.Start.X, elbow.Start.Y, elbow.Bend.X, elbow.Bend.Y, target.X, target.Y);
        drawing.Path([leader], Look.Line(Paint.Surface, 5));
        drawing.Path([leader], Look.Line(paint, part.Selected ? 3 : 1.8));
        drawing.Circle(target, 4, new Look { Fill = paint, Stroke = Paint.Surface, Width = 1.5 });
        var lettering = new Lettering { Size = 16, Anchor = anchor, Paint = part.Selected ? Paint.Mark : Paint.Ink2 };
        var big = new Lettering { Size = 19, Bold = true, Anchor = anchor, Paint = paint };
        var width = Math.Max(lettering.WidthOf(part.Name), big.WidthOf(part.Size));
        var left = anchor == Anchor.Start ? start.X - 4 : start.X - width;
        drawing.Plate(new Box(left, start.Y - 22, Math.Max(TouchSize, width + 4), TouchSize), 0, SectionLooks.Touch);
        drawing.Text(part.Name, start, lettering);
        drawing.Text(part.Size, start with { Y = start.Y + 20 }, big);
    }

    internal static void Numbered(IDrawing drawing, SectionPart part, SectionGeometry at)
    {
        var place = NumberPlace(part.Key, at);
        drawing.Plate(Box.Around(place, NumberTouch, NumberTouch), 0, SectionLooks.Touch);
        drawing.Circle(place, NumberRadius, new Look
        {
            Fill = part.Selected ? Paint.Mark : Paint.Surface,
            Stroke = part.Selected ? Paint.Mark : Paint.Ink,
            Width = 3,
        });
        drawing.Text(
            part.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), place with { Y = place.Y + 0.35 * NumberSize },
            new Lettering { Size = NumberSize, Bold = true, Paint = part.Selected ? Paint.OnMark : Paint.Ink });
    }

    // Numbers stand beside small parts and on large ones, so that none hides another
    private static ChartPoint NumberPlace(string key, SectionGeometry at) => key switch
    {
        PartKeys.AirCorrector => new(WellCentre - 46, 160),
        PartKeys.EmulsionHoles => new(WellCentre - 34, 232),
        PartKeys.MainJet => new(WellCentre + 26, at.JetTop + 36),
        PartKeys.FloatLevel => new(94, at.LevelY + 2),
        PartKeys.IdleBleed => new(IdleX, 76),
        PartKeys.PumpJet => new(WallRight + 26, 140),
        PartKeys.IdleJet => new(IdleX, 256),
        PartKeys.Nozzle => new(BoreCentre + 6, 222),
        PartKeys.Choke => new(WallRight - 8, 312),
        PartKeys.ProgressionHoles => new(PassageX + 46, at.HoleY(0.002)),
        PartKeys.ThrottleBore => new(BoreCentre - 40, SpindleY + 46),
        _ => new(PassageX + 80, ScrewY + 6),
    };

    private static (ChartPoint Text, Anchor Anchor, (ChartPoint Start, ChartPoint Bend) Elbow) Stand(string key, SectionGeometry at)
    {
        (ChartPoint, Anchor, (ChartPoint, ChartPoint)) Right(double y, double bend) =>
            (new(RightX, y), Anchor.Start, (new(RightX - 6, y + 4), new(bend, y + 4)));
        (ChartPoint, Anchor, (ChartPoint, ChartPoint)) Left(double x, double y, double bend) =>
            (new(x, y), Anchor.End, (new(x + 6, y + 4), new(bend, y + 4)));
        return key switch
        {
            PartKeys.AirCorrector => Left(LeftX - 4, 52, 262),
            PartKeys.EmulsionHoles => Left(LeftX - 4, 108, 250),
            PartKeys.MainJet => Left(LeftX - 18, 478, 232),
            PartKeys.FloatLevel => Left(62, at.LevelY - 4, 70),
            PartKeys.IdleBleed => Right(56, 676),
            PartKeys.PumpJet => Right(118, 680),
            PartKeys.IdleJet => Right(186, 680),
            PartKeys.Nozzle => Right(248, 678),
            PartKeys.Choke => Right(310, 678),
            PartKeys.ProgressionHoles => Right(384, 676),
            PartKeys.ThrottleBore => Right(446, 676),
            _ => Right(518, 684),
        };
    }
}
