using Tickover.Reports.Charts;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>The wall in its own outline: every cell with its depth in colour and in figures, pads, the deepest, what was not read.</summary>
public static class WallMapPicture
{
    private const double Ease = 2;
    private const double Inset = 1;
    private const double LightFrom = 0.5;

    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(WallView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var (drawing, frame) = (new SvgDrawing(view.IdPrefix), new WallFrame(view));
        Draw(drawing, view, frame);
        return drawing.ToSvg(new SvgFrame
        {
            Width = frame.Width,
            Height = frame.Height,
            ClassName = "wall-picture",
            Label = WallSentence.Of(view.Analysis),
            Role = view.Address is null ? "img" : "group",
        });
    }

    internal static void Draw(IDrawing drawing, WallView view, WallFrame frame)
    {
        var outline = new Polyline([.. view.Survey.Outline.Corners.Select(frame.At)], Closed: true);
        foreach (var cell in view.Survey.Cells)
        {
            Cell(drawing, view, frame, (cell, outline));
        }

        WallMapMarks.Pads(drawing, view, frame, outline);
        drawing.Path([outline], new Look { Stroke = Paint.Ink, Width = 3 });
        WallMapMarks.Names(drawing, view, frame);
        WallMapMarks.Rings(drawing, view, frame);
        WallLegend.Draw(drawing, view, frame);
    }

    /// <summary>Colour of a depth.</summary>
    internal static double Part(WallSurvey survey, double depth) => Math.Clamp(depth / survey.ThicknessMillimetres, 0, 1);

    private static void Cell(IDrawing drawing, WallView view, WallFrame frame, (WallCell Cell, Polyline Outline) of)
    {
        var cell = of.Cell;
        var said = cell.Reading.Kind is CellReadingKind.NotRead ? "not read" : $"{WallFigures.Cell(cell.Reading)} mm";
        using (drawing.Part(new PartMark(cell.Name, $"{cell.Name}, {said}, {ZoneWords.Where(cell.Zone)}", view.Address?.Invoke(cell.Name), string.Equals(cell.Name, view.Chosen, StringComparison.Ordinal)) { Focusable = view.Address is not null }))
        {
            var box = frame.At(cell.Box).Grown(-Inset);
            using (drawing.ClippedTo([of.Outline]))
            {
                Ground(drawing, view.Survey, cell, box);
            }

            Figure(drawing, view.Survey, cell, box);
        }
    }

    private static void Ground(IDrawing drawing, WallSurvey survey, WallCell cell, Box box)
    {
        if (cell.Reading.Kind is CellReadingKind.NotRead)
        {
            drawing.Plate(box, Ease, Look.Outlined(Paint.Surface, Paint.Hair));
            drawing.Plate(box, Ease, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));
        }
        else
        {
            drawing.Plate(box, Ease, Look.Filled(cell.Reading.Kind is CellReadingKind.Hole ? Paint.Black : Cividis.PaintAt(Part(survey, cell.Reading.DepthMillimetres))));
        }

        if (WallMapMarks.IsThin(survey, cell))
        {
            // Outside a limit is a diamond, here as on every picture.
            var at = new ChartPoint(box.Left + 10, box.Top + 10);
            drawing.Path([new Polyline([new(at.X, at.Y - 7), new(at.X + 7, at.Y), new(at.X, at.Y + 7), new(at.X - 7, at.Y)], Closed: true)], new Look { Fill = Paint.White, Stroke = Paint.Black, Width = 2 });
        }
    }

    private static void Figure(IDrawing drawing, WallSurvey survey, WallCell cell, Box box)
    {
        var dark = cell.Reading.Kind is CellReadingKind.Hole || Part(survey, cell.Reading.DepthMillimetres) < LightFrom;
        var lettering = new Lettering { Bold = true, Paint = dark ? Paint.White : Paint.Black };
        var text = WallFigures.Cell(cell.Reading);
        if (lettering.WidthOf(text) > box.Width)
        {
            text = text.Replace("0.", ".", StringComparison.Ordinal);
        }

        if (text.Length > 0 && lettering.WidthOf(text) <= box.Width && lettering.Size <= box.Height)
        {
            drawing.Text(text, new ChartPoint(box.Centre.X, box.Centre.Y + 5), lettering);
        }
    }
}
