using Tickover.Reports.Charts;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>What lies over the cells of a wall map: pads, names of rows and columns, the deepest, the one chosen.</summary>
internal static class WallMapMarks
{
    internal static bool IsThin(WallSurvey survey, WallCell cell) =>
        cell.Reading.Kind is CellReadingKind.Depth or CellReadingKind.Deeper or CellReadingKind.Hole
        && cell.Reading.DepthMillimetres >= (1 - survey.Limits.LeastLeft) * survey.ThicknessMillimetres;

    internal static void Pads(IDrawing drawing, WallView view, WallFrame frame, Polyline outline)
    {
        using (drawing.ClippedTo([outline]))
        {
            foreach (var pad in view.Survey.Pads)
            {
                var box = frame.At(pad.Box).Grown(-2);
                drawing.Plate(box, 0, Look.Line(Paint.White, 5));
                drawing.Plate(box, 0, new Look { Stroke = Paint.Black, Width = 2.5, Dashes = (9, 6) });
            }
        }
    }

    internal static void Names(IDrawing drawing, WallView view, WallFrame frame)
    {
        var lettering = new Lettering { Paint = Paint.Ink2 };
        foreach (var column in view.Survey.Cells.GroupBy(c => c.Box.Left))
        {
            Name(drawing, frame, column.First(), (column.First().Name.TrimEnd("0123456789".ToCharArray()), true), lettering);
        }

        foreach (var row in view.Survey.Cells.GroupBy(c => c.Box.Top))
        {
            Name(drawing, frame, row.First(), (row.First().Name.TrimStart("ABCDEFGHIJKLMNOPQRSTUVWXYZ".ToCharArray()), false), lettering);
        }
    }

    internal static void Rings(IDrawing drawing, WallView view, WallFrame frame)
    {
        if (view.Survey.Deepest is { } deepest)
        {
            var box = frame.At(deepest.Box).Grown(-3);
            drawing.Plate(box, 4, Look.Line(Paint.Black, 6));
            drawing.Plate(box, 4, Look.Line(Paint.White, 3));
        }

        if (view.Survey.Cells.FirstOrDefault(c => string.Equals(c.Name, view.Chosen, StringComparison.Ordinal)) is { } chosen)
        {
            var box = frame.At(chosen.Box);
            drawing.Plate(box, 4, Look.Line(Paint.White, 9));
            drawing.Plate(box, 4, Look.Line(Paint.Data("#2a2e9a"), 4.5));
        }
    }

    // Along the edge of the map that the row or column runs to.
    private static void Name(IDrawing drawing, WallFrame frame, WallCell cell, (string Text, bool IsColumn) name, Lettering lettering)
    {
        const double beside = 8, under = 5;
        var at = frame.At(cell.Box).Centre;
        var above = name.IsColumn != frame.IsTurned;
        drawing.Text(
            name.Text,
            above ? new ChartPoint(at.X, frame.Map.Top - beside) : new ChartPoint(frame.Map.Left - beside, at.Y + under),
            above ? lettering : lettering with { Anchor = Anchor.End });
    }
}
