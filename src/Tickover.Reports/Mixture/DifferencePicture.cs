using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>What a trial changes, as a drawing in the map's own frame: λ of the trial less λ of what is fitted.</summary>
public static class DifferencePicture
{
    // Changes are often small over wide areas, where a step in the colour would show as an edge; unused levels cost nothing
    private const int Bands = 144;
    private const int MostContours = 7;
    private const double Tolerance = 0.2;

    /// <summary>Draws the difference.</summary>
    /// <param name="view">What to show and how.</param>
    /// <returns>One svg element with the axes' transforms in its data attributes.</returns>
    /// <exception cref="ArgumentException">The maps are not over one grid.</exception>
    public static string ToSvg(DifferenceView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var frame = MapFrame.For(view.Fitted.Grid, view.Size);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view, frame);
        return drawing.ToSvg(new SvgFrame
        {
            Width = frame.Width,
            Height = frame.Height,
            ClassName = "difference-picture",
            Label = Sentence(view),
            Data = frame.Data(),
        });
    }

    /// <summary>The difference in one sentence.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>Such as "Trial less fitted. Richer by up to 0.10, at 2,000 rpm and 8°."</returns>
    public static string Sentence(DifferenceView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return DifferenceTable.Sentence(view);
    }

    /// <summary>The same figures as a table.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>The table.</returns>
    public static PictureTable TableFor(DifferenceView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return DifferenceTable.For(view);
    }

    internal static void Draw(IDrawing drawing, DifferenceView view, MapFrame frame)
    {
        var field = new DifferenceField(view, frame);
        var labels = new MapLabels(drawing, frame, view.Size);
        MapAxes.Ground(drawing, frame);
        var contours = Coloured(drawing, field);
        MapAxes.Outline(drawing, field.Area.Outline, frame);
        drawing.MarksHere();
        if (view.Tapped is { } tapped)
        {
            labels.Keep(frame.Place(tapped), MapMarks.RingRadius);
            MapMarks.Ring(drawing, frame.Place(tapped));
        }

        labels.Change(field, contours);
        labels.NoAnswers(field.Trial);
        MapAxes.Draw(drawing, frame, view.Size);
        MapLegend.DrawChange(drawing, frame, field.Reach, view.Size);
    }

    private static List<(double Level, Polyline Line)> Coloured(IDrawing drawing, DifferenceField field)
    {
        if (field.Area.Outline.Count == 0)
        {
            return [];
        }

        using var clip = drawing.ClippedTo(field.Area.Outline);
        drawing.Path(field.Area.Outline, Look.Filled(Diverging.PaintAt(-1)));
        var tracer = new ContourTracer(ContourTracer.Enclosed(field.Change));
        for (var band = 1; band < Bands; band++)
        {
            var level = field.Reach * (2.0 * band / Bands - 1);
            drawing.Path(
                Simplification.Simplify(tracer.Trace(level), Tolerance),
                Look.Filled(Diverging.PaintAt(2.0 * band / (Bands - 1) - 1)));
        }

        var contours = new List<(double, Polyline)>();
        var lines = new ContourTracer(field.Change);
        foreach (var level in Ticks.Nice(field.Span.Least, field.Span.Most, MostContours).Where(l => Math.Abs(l) > DifferenceField.NoChange))
        {
            var traced = Simplification.Simplify(lines.Trace(level), Tolerance);
            drawing.Path(traced, Look.Line(Paint.Data("#12303f"), 1.3));
            contours.AddRange(traced.Select(line => (level, line)));
        }

        Earlier(drawing, field.Fitted.TooLean);
        field.Area.DrawPatches(drawing);
        return contours;
    }

    private static void Earlier(IDrawing drawing, Field beyond) => drawing.Path(
        Simplification.Simplify(new ContourTracer(beyond).Trace(0), Tolerance),
        Look.Line(Paint.Black, 3) with { Dashes = (2, 4) });
}
