using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.StripDown.Levels;

namespace Tickover.Reports.StripDown;

/// <summary>Float chambers of a set in section, side by side in engine order: fuel where it stands, and under them the same levels twelve times as large.</summary>
public static class LevelSetPicture
{
    private const double RowHeight = 420;
    private const double Top = 46;                          // face of the lid
    private const double Floor = 204;
    private const double StripTop = 226;
    private const double StripHeight = 130;
    private const double HalfRange = 2.5;                   // mm the strip shows above and below

    /// <summary>Draws it for a page.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <param name="size">For a wide page or a phone.</param>
    /// <param name="idPrefix">Begins every id inside.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(LevelSheet sheet, LevelAnswer answer, PictureSize size, string idPrefix)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(answer);
        var columns = new SetColumns(answer.Carburettors.Count, size, RowHeight);
        var drawing = new SvgDrawing(idPrefix);
        for (var i = 0; i < answer.Carburettors.Count; i++)
        {
            Chamber(drawing, columns.Of(i), (sheet, answer), answer.Carburettors[i]);
        }

        for (var row = 0; row < columns.Rows; row++)
        {
            Band(drawing, columns, row, (sheet, answer));
        }

        for (var i = 0; i < answer.Carburettors.Count; i++)
        {
            Reading(drawing, columns.Of(i), answer.Carburettors[i]);
        }

        return drawing.ToSvg(new SvgFrame
        {
            Width = columns.Width,
            Height = columns.Height,
            ClassName = "level-picture",
            Label = $"{sheet.Name}: {answer.Verdict}",
        });
    }

    private static void Chamber(SvgDrawing drawing, Box cell, (LevelSheet Sheet, LevelAnswer Answer) said, LevelVerdict v)
    {
        var middle = cell.Centre.X;
        var half = Math.Min(cell.Width / 2 - 8, 66);
        var (left, top) = (middle - half, cell.Top + Top);
        drawing.Text(v.Float.Where, new ChartPoint(middle, cell.Top + 22), new Lettering { Size = 18, Bold = true });
        var casing = new Look { Fill = Paint.Hatched(Hatch.Casing), Stroke = Paint.MetalEdge, Width = 1.8 };
        drawing.Path([Polyline.Rectangle(new Box(left, top, 2 * half, Floor - Top + 10)), Polyline.Rectangle(new Box(left + 10, top, 2 * half - 20, Floor - Top))], casing);
        drawing.Plate(new Box(left - 4, top - 10, 2 * half + 8, 10), 2, new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 1.8 });

        var scale = Scale(said);
        var inside = (Left: left + 11, Width: 2 * half - 22);
        var surface = v.Level is { } level ? Math.Clamp(top + scale * level.Value, top + 2, cell.Top + Floor - 4) : top + 2;
        drawing.Plate(new Box(inside.Left, surface, inside.Width, cell.Top + Floor - surface), 0, new Look { Fill = Paint.Fuel, Stroke = Paint.FuelEdge, Width = 1.2 });
        Float(drawing, (middle, inside.Width * 0.34), (surface, top), scale, (said.Sheet, v));
        if (said.Sheet.Nozzle is { } nozzle)
        {
            var lip = top + scale * nozzle;
            drawing.Line(new ChartPoint(left + 2 * half - 34, lip), new ChartPoint(left + 2 * half - 10, lip), new Look { Stroke = Paint.FuelEdge, Width = 3, Dashes = (3, 4) });
        }
    }

    private static void Float(SvgDrawing drawing, (double X, double Half) at, (double Surface, double Lid) y, double scale, (LevelSheet Sheet, LevelVerdict V) said)
    {
        var height = scale * said.Sheet.Shape.HeightMetres * 1000;
        var bottom = y.Surface + scale * (said.V.Sunk ?? said.Sheet.Shape.HeightMetres * 1000);
        var metal = new Look { Stroke = Paint.MetalEdge, Width = 3 };
        var hinge = new ChartPoint(at.X - at.Half - 12, y.Lid + 14);
        drawing.Plate(new Box(at.X - at.Half, bottom - height, 2 * at.Half, height), Math.Min(16, height / 3), new Look { Fill = Paint.Surface, Stroke = Paint.MetalEdge, Width = 2 });
        drawing.Line(hinge, new ChartPoint(at.X - at.Half * 0.3, bottom - height + 2), metal);
        drawing.Circle(hinge, 4, new Look { Fill = Paint.Surface, Stroke = Paint.MetalEdge, Width = 2 });
        drawing.Path([new Polyline([new(hinge.X + 12, y.Lid - 10), new(hinge.X + 22, y.Lid - 10), new(hinge.X + 22, y.Lid + 4), new(hinge.X + 17, y.Lid + 14), new(hinge.X + 12, y.Lid + 4)], Closed: true)], new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 1.5 });
    }

    private static void Band(SvgDrawing drawing, SetColumns columns, int row, (LevelSheet Sheet, LevelAnswer Answer) said)
    {
        var (left, right) = columns.Row(row, said.Answer.Carburettors.Count);
        var top = row * RowHeight + StripTop;
        var (middle, perMillimetre) = (top + StripHeight / 2, StripHeight / 2 / HalfRange);
        var half = said.Sheet.Limit / 2 * perMillimetre;
        drawing.Plate(new Box(left + 2, top, right - left - 4, StripHeight), 4, new Look { Fill = Paint.Sunken, Stroke = Paint.Hair, Width = 1 });
        drawing.Plate(new Box(left + 2, middle - half, right - left - 4, 2 * half), 0, new Look { Fill = Paint.Band, Stroke = Paint.Ink2, Width = 1.2 });
        drawing.Line(new ChartPoint(left + 2, middle), new ChartPoint(right - 2, middle), new Look { Stroke = Paint.Ink, Width = 1.5, Dashes = (6, 5) });
        drawing.Text(Line($"{said.Answer.Target:0.0} mm below the lid"), new ChartPoint(left + 8, top + 17), new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2 });
    }

    private static void Reading(SvgDrawing drawing, Box cell, LevelVerdict v)
    {
        var (top, x) = (cell.Top + StripTop, cell.Centre.X);
        var (middle, perMillimetre) = (top + StripHeight / 2, StripHeight / 2 / HalfRange);
        var word = new ChartPoint(x, top + StripHeight + 26);
        if (v.Off is not { } off)
        {
            ConditionMark.Draw(drawing, new ChartPoint(x, middle), 22, Condition.Outside);
            drawing.Text("floods", word, new Lettering { Size = 18, Bold = true });
            return;
        }

        double At(double rise) => middle - perMillimetre * Math.Clamp(rise, -HalfRange + 0.15, HalfRange - 0.15);
        var half = Math.Min(cell.Width / 2 - 10, 58);
        drawing.Line(new ChartPoint(x - half, At(off)), new ChartPoint(x + half, At(off)), Look.Line(Paint.FuelEdge, 5));
        var bracket = x + half - 12;                        // beside the mark, which would hide it
        drawing.Line(new ChartPoint(bracket, At(off + v.OwnBand)), new ChartPoint(bracket, At(off - v.OwnBand)), Look.Line(Paint.Ink, 2));
        foreach (var end in new[] { off + v.OwnBand, off - v.OwnBand })
        {
            drawing.Line(new ChartPoint(bracket - 7, At(end)), new ChartPoint(bracket + 7, At(end)), Look.Line(Paint.Ink, 2));
        }

        var condition = v.Finding switch { LevelFinding.Equal => v.IsMassOff ? Condition.Soon : Condition.Within, LevelFinding.Doubtful => Condition.Watch, _ => Condition.Outside };
        ConditionMark.Draw(drawing, new ChartPoint(x, At(off)), 20, condition);
        drawing.Text(Word(v, off), word, new Lettering { Size = 18, Bold = true });
        drawing.Text(v is { IsMassOff: true } ? Line($"float {v.MassOff:+0.0;−0.0} g") : Line($"±{v.OwnBand:0.0} mm"), new ChartPoint(x, word.Y + 22), new Lettering { Size = 15, Paint = Paint.Ink2 });
    }

    private static string Word(LevelVerdict v, double off) => v.Finding switch
    {
        LevelFinding.Equal => "equal",
        LevelFinding.Doubtful => "cannot tell",
        _ => Line($"{(off > 0 ? "high" : "low")} {Math.Abs(off):0.0} mm"),
    };

    // all chambers on one scale, so that the deepest float still stands over the floor
    private static double Scale((LevelSheet Sheet, LevelAnswer Answer) said)
    {
        var deepest = said.Answer.Carburettors.Max(v => (v.Level?.Value ?? 0) + (v.Sunk ?? said.Sheet.Shape.HeightMetres * 1000));
        return (Floor - Top - 12) / Math.Max(deepest, 10);
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
