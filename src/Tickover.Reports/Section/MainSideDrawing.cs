using Tickover.Reports.Charts;
using Tickover.Workshop.Cars;
using static Tickover.Reports.Section.SectionGeometry;

namespace Tickover.Reports.Section;

/// <summary>Float chamber, main jet, well with its emulsion tube, air corrector.</summary>
internal static class MainSideDrawing
{
    private const double ChamberLeft = 90;
    private const double ChamberRight = 238;
    private const double ChamberTop = 204;
    private const double ChamberBottom = 436;
    private const double JetHeight = 22;
    private const double SmallestHole = 2;

    internal static void Chamber(IDrawing drawing, SectionGeometry at, bool selected)
    {
        drawing.Plate(new Box(ChamberLeft, ChamberTop, ChamberRight - ChamberLeft, ChamberBottom - ChamberTop), 6, SectionLooks.Cavity);
        drawing.Path([Shapes.Rectangle(ChamberLeft + 1, at.LevelY, ChamberRight - 1, ChamberBottom - 1)], SectionLooks.Fuel);
        var passage = at.JetTop + JetHeight;
        drawing.Path([Shapes.Rectangle(ChamberRight - 2, passage, WellCentre + 20, passage + 14)], SectionLooks.Fuel);
        // Needle, arm, float: they ride at the level
        drawing.Path([Shapes.Closed(142, 150, 162, 150, 162, 196, 156, 216, 148, 216, 142, 196)], SectionLooks.Metal);
        drawing.Path([Shapes.Closed(147, 216, 157, 216, 152, 230)], Look.Filled(Paint.MetalEdge));
        drawing.Path([Shapes.Open(106, 234, 150, 234), Shapes.Open(106, 234, 122, at.LevelY - 18)], Look.Line(Paint.MetalEdge, 3));
        drawing.Circle(new ChartPoint(106, 234), 5, SectionLooks.Cavity);
        drawing.Plate(new Box(116, at.LevelY - 24, 96, 56), 20, SectionLooks.Cavity with { Width = 2 });
        drawing.Line(
            new ChartPoint(70, at.LevelY), new ChartPoint(ChamberLeft + 24, at.LevelY),
            Look.Line(selected ? Paint.Mark : Paint.Ink, selected ? 4 : 2));
    }

    internal static void Well(IDrawing drawing, SectionGeometry at)
    {
        drawing.Path([Shapes.Rectangle(WellCentre - WellHalf, WellTop, WellCentre + WellHalf, at.JetTop)], SectionLooks.Cavity);
        drawing.Path([Shapes.Rectangle(WellCentre - WellHalf + 1, at.WellLevelY, WellCentre + WellHalf - 1, at.JetTop)], SectionLooks.Fuel);
        // At rest it would stand here
        drawing.Line(
            new ChartPoint(WellCentre - WellHalf, at.LevelY), new ChartPoint(WellCentre + WellHalf, at.LevelY),
            Look.Line(Paint.FuelEdge, 1.5) with { Dashes = (4, 3) });
    }

    internal static void Tube(IDrawing drawing, SectionGeometry at, CarBarrel barrel, bool selected)
    {
        drawing.Path([Shapes.Rectangle(WellCentre - 11, 186, WellCentre + 11, at.JetTop - 6)], SectionLooks.Body(selected));
        foreach (var row in barrel.EmulsionHoles)
        {
            var y = Math.Clamp(at.WellY(row.DepthMetres), 192, at.JetTop - 8);
            var radius = Math.Clamp(at.OnWell(row.DiameterMetres) / 2, SmallestHole, 5);
            // A row above the fuel lets air in, one below it does not yet
            var look = y < at.WellLevelY
                ? new Look { Fill = Paint.Air, Stroke = Paint.AirEdge, Width = 1.6 }
                : Look.Filled(selected ? Paint.OnMark : Paint.Ink);
            foreach (var x in (ReadOnlySpan<double>)(row.Count > 1 ? [-5, 5] : [0]))
            {
                drawing.Circle(new ChartPoint(WellCentre + x, y), radius, look);
            }
        }
    }

    internal static void Corrector(IDrawing drawing, bool selected)
    {
        drawing.Path([Shapes.Rectangle(WellCentre - 14, 158, WellCentre + 14, 187)], SectionLooks.Body(selected));
        drawing.Line(new ChartPoint(WellCentre, 158), new ChartPoint(WellCentre, 187), Look.Line(Paint.Air, 7));
        drawing.Line(new ChartPoint(WellCentre, 158), new ChartPoint(WellCentre, 187), Look.Line(Paint.AirEdge, 3));
        drawing.Path([Shapes.Open(WellCentre, 132, WellCentre, 154), Shapes.Open(WellCentre - 6, 146, WellCentre, 154, WellCentre + 6, 146)], SectionLooks.AirLine);
    }

    internal static void MainJet(IDrawing drawing, SectionGeometry at, bool selected)
    {
        drawing.Path([Shapes.Rectangle(WellCentre - 20, at.JetTop, WellCentre + 20, at.JetTop + JetHeight)], SectionLooks.Body(selected));
        var (from, to) = (new ChartPoint(WellCentre, at.JetTop), new ChartPoint(WellCentre, at.JetTop + JetHeight));
        drawing.Line(from, to, Look.Line(Paint.FuelEdge, 7));
        drawing.Line(from, to, Look.Line(Paint.Fuel, 4));
    }
}
