using Tickover.Reports.Charts;
using Tickover.Workshop.Cars;
using static Tickover.Reports.Section.SectionGeometry;

namespace Tickover.Reports.Section;

/// <summary>Idle jet and bleed, progression holes, mixture screw, pump jet.</summary>
internal static class IdleSideDrawing
{
    private const double PassageHalf = 6;
    private const double MixTop = 208;
    private const double JetTop = 228;
    private const double JetBottom = 298;
    private const double Behind = 336;
    private const double PumpY = 140;
    private const double ScrewLiftATurn = 0.00075;
    private const double ThinnestHole = 2.5;

    internal static void Passages(IDrawing drawing, SectionGeometry at)
    {
        // From the foot of the well, behind the barrel, up to the jet
        var foot = Math.Min(Behind, at.JetTop - 6);
        drawing.Path([Shapes.Open(WellCentre + WellHalf, foot, IdleX, foot, IdleX, JetBottom)], SectionLooks.Behind);
        drawing.Path(
            [
                Shapes.Closed(
                    PassageX - PassageHalf, MixTop, IdleX + 12, MixTop, IdleX + 12, JetTop, IdleX - 12, JetTop, IdleX - 12, MixTop + 12,
                    PassageX + PassageHalf, MixTop + 12, PassageX + PassageHalf, ScrewY + 7, WallRight, ScrewY + 7, WallRight, ScrewY - 7,
                    PassageX - PassageHalf, ScrewY - 7),
            ],
            SectionLooks.Fuel);
    }

    internal static void IdleJet(IDrawing drawing, bool selected)
    {
        drawing.Path([Shapes.Rectangle(IdleX - 12, JetTop, IdleX + 12, JetBottom)], SectionLooks.Body(selected));
        drawing.Line(new ChartPoint(IdleX, JetTop), new ChartPoint(IdleX, JetBottom), Look.Line(Paint.FuelEdge, 6));
        drawing.Line(new ChartPoint(IdleX, JetTop), new ChartPoint(IdleX, JetBottom), Look.Line(Paint.Fuel, 3.5));
    }

    internal static void IdleBleed(IDrawing drawing, bool selected)
    {
        drawing.Path([Shapes.Rectangle(IdleX - 5, 120, IdleX + 5, MixTop)], SectionLooks.AirPassage);
        drawing.Path([Shapes.Rectangle(IdleX - 13, 98, IdleX + 13, 124)], SectionLooks.Body(selected));
        drawing.Line(new ChartPoint(IdleX, 98), new ChartPoint(IdleX, 124), Look.Line(Paint.AirEdge, 5));
        drawing.Path([Shapes.Open(IdleX, 72, IdleX, 94), Shapes.Open(IdleX - 6, 86, IdleX, 94, IdleX + 6, 86)], SectionLooks.AirLine);
    }

    internal static void Progression(IDrawing drawing, SectionGeometry at, CarBarrel barrel, bool selected)
    {
        foreach (var hole in barrel.ProgressionHoles)
        {
            var y = at.HoleY(hole.PositionMetres);
            var half = Math.Max(ThinnestHole, at.OnBore(hole.DiameterMetres)) / 2;
            drawing.Path([Shapes.Rectangle(WallRight, y - half, PassageX - PassageHalf, y + half)], HoleLook(y, at, selected));
        }
    }

    internal static void MixtureScrew(IDrawing drawing, SectionGeometry at, double turns, bool selected)
    {
        var tip = WallRight + 3 + Math.Clamp(at.OnBore(turns * ScrewLiftATurn), 0, 18);
        drawing.Path(
            [
                Shapes.Closed(tip, ScrewY, tip + 34, ScrewY - 7, 670, ScrewY - 7, 670, ScrewY + 7, tip + 34, ScrewY + 7),
                Shapes.Rectangle(666, ScrewY - 10, 680, ScrewY + 10),
            ],
            SectionLooks.Body(selected));
    }

    internal static void Pump(IDrawing drawing, bool selected, bool fitted, bool flows)
    {
        drawing.Path([Shapes.Rectangle(WallRight, PumpY - 6, 592, PumpY + 6)], fitted ? SectionLooks.Fuel : SectionLooks.Cavity);
        drawing.Circle(new ChartPoint(592, PumpY), 11, fitted ? SectionLooks.Fuel : SectionLooks.Cavity);
        drawing.Circle(new ChartPoint(592, PumpY + 3), 6, SectionLooks.Metal);
        drawing.Path([Shapes.Closed(WallRight, PumpY - 7, WallRight - 26, PumpY + 3, WallRight - 23, PumpY + 11, WallRight, PumpY + 7)], SectionLooks.Body(selected));
        for (var k = 1; flows && k <= 4; k++)
        {
            drawing.Circle(new ChartPoint(WallRight - 25 - 7 * k, PumpY + 8 + 9 * k), 2.4, SectionLooks.Drop);
        }
    }

    // Upstream of the plate's edge a hole bleeds air, downstream of it feeds fuel
    private static Look HoleLook(double y, SectionGeometry at, bool selected) =>
        (y < at.EdgeY ? SectionLooks.AirPassage : SectionLooks.Fuel) is var look && selected
            ? look with { Stroke = Paint.Mark, Width = 2 }
            : look;
}
