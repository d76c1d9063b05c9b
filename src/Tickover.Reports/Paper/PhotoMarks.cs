using Tickover.Reports.Charts;
using Tickover.Reports.Fonts;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>Arrows on a photograph with their notes: dark on a white edge, so that they show on any picture.</summary>
internal static class PhotoMarks
{
    private const double TextSize = 15;
    private const double Margin = 6;
    private const double HeadLength = 16;
    private const double HeadHalfAngle = 0.45;

    /// <summary>Draws the marks over a picture of a size in drawing units.</summary>
    internal static void Draw(IDrawing drawing, IReadOnlyList<PhotographMark> marks, double width, double height)
    {
        using var edge = drawing.ClippedTo([Polyline.Rectangle(new Box(0, 0, width, height))]);
        foreach (var mark in marks)
        {
            var tail = new ChartPoint(Inside(mark.FromX) * width, Inside(mark.FromY) * height);
            var point = new ChartPoint(Inside(mark.ToX) * width, Inside(mark.ToY) * height);
            Arrow(drawing, tail, point, Paint.White, 7);
            Arrow(drawing, tail, point, Paint.Ink, 3);
            Note(drawing, PaperText.Clean(mark.Note).Replace('\n', ' '), tail, width, height);
        }
    }

    private static void Arrow(IDrawing drawing, ChartPoint tail, ChartPoint point, Paint paint, double stroke)
    {
        var along = Math.Atan2(tail.Y - point.Y, tail.X - point.X);
        var look = Look.Line(paint, stroke);
        drawing.Line(tail, point, look);
        drawing.Path([new Polyline([Barb(point, along - HeadHalfAngle), point, Barb(point, along + HeadHalfAngle)], Closed: false)], look);
    }

    private static ChartPoint Barb(ChartPoint point, double angle) => new(point.X + HeadLength * Math.Cos(angle), point.Y + HeadLength * Math.Sin(angle));

    private static void Note(IDrawing drawing, string note, ChartPoint tail, double width, double height)
    {
        if (note.Length == 0)
        {
            return;
        }

        var lettering = new Lettering { Size = TextSize, Bold = true };
        var shown = Fitting(note, width - 4 * Margin);
        var (w, h) = (WidthOf(shown) + 2 * Margin, TextSize + Margin);
        var centre = new ChartPoint(Math.Clamp(tail.X, w / 2, Math.Max(width - w / 2, w / 2)), Math.Clamp(tail.Y, h / 2, Math.Max(height - h / 2, h / 2)));
        drawing.Plate(Box.Around(centre, w, h), 3, new Look { Fill = Paint.White, Stroke = Paint.Ink, Width = 1 });
        drawing.Text(shown, new ChartPoint(centre.X, centre.Y + TextSize * 0.36), lettering);
    }

    // What does not fit across the picture is told in full below it
    private static string Fitting(string note, double room)
    {
        var shown = note;
        while (shown.Length > 1 && WidthOf(shown) > room)
        {
            // Two letters at once where they are the halves of one
            shown = shown.TrimEnd('…')[..^(char.IsLowSurrogate(shown.TrimEnd('…')[^1]) ? 2 : 1)] + "…";
        }

        return shown;
    }

    private static double WidthOf(string text) =>
        TextSize * text.EnumerateRunes().Sum(r => FontShelf.For(r.Value, Typeface.Bold) is { } face ? FontShelf.Of(face).AdvanceOf(r.Value) : 1);

    private static double Inside(double part) => double.IsFinite(part) ? Math.Clamp(part, 0, 1) : 0.5;
}
