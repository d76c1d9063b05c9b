using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>The coloured field with its contours, hatches, edges of target and hand-overs, cut to where there is an answer.</summary>
internal static class FieldLayer
{
    // Thin enough that no step shows
    private const int Bands = 96;

    // Deviation of a drawn line from the traced one that no eye sees, drawing units
    private const double BandTolerance = 0.25;
    private const double LineTolerance = 0.1;
    private const int MostContours = 9;
    private static readonly Paint Casing = Paint.Data("#12303f");

    /// <summary>Draws the field and gives back its contours for their figures.</summary>
    internal static IReadOnlyList<(double Level, Polyline Line)> Draw(IDrawing drawing, MapField field, LambdaScale scale)
    {
        if (field.Area.Outline.Count == 0)
        {
            return [];
        }

        using var clip = drawing.ClippedTo(field.Area.Outline);
        drawing.Path(field.Area.Outline, Look.Filled(Cividis.PaintAt(0)));
        Fill(drawing, field.Lambda, level => scale.Richest + level * (scale.Leanest - scale.Richest));
        var contours = Contours(drawing, field.Lambda, scale);
        Edge(drawing, field.TooLean, Hatch.Lean);
        Edge(drawing, field.TooRich, Hatch.Rich);
        HandOvers(drawing, field.Feeding.HandOvers());
        field.Area.DrawPatches(drawing);
        return contours;
    }

    /// <summary>Fills the field with nested areas, each a little lighter and on top of the last, so that no seam shows between them.</summary>
    private static void Fill(IDrawing drawing, Field field, Func<double, double> value)
    {
        var tracer = new ContourTracer(ContourTracer.Enclosed(field));
        for (var band = 1; band < Bands; band++)
        {
            var areas = tracer.Trace(value((double)band / Bands));
            drawing.Path(Simplification.Simplify(areas, BandTolerance), Look.Filled(Cividis.PaintAt((double)band / (Bands - 1))));
        }
    }

    private static List<(double Level, Polyline Line)> Contours(IDrawing drawing, Field field, LambdaScale scale)
    {
        var tracer = new ContourTracer(field);
        var contours = new List<(double, Polyline)>();
        foreach (var level in Ticks.Nice(scale.Richest, scale.Leanest, MostContours))
        {
            var lines = Simplification.Simplify(tracer.Trace(level), LineTolerance);
            var isStoichiometric = level == 1;
            // A dark line under the white one keeps it readable over light colours
            drawing.Path(lines, Look.Line(Casing, isStoichiometric ? 4 : 2.6) with { Opacity = isStoichiometric ? 0.6 : 0.4 });
            drawing.Path(lines, Look.Line(Paint.White, isStoichiometric ? 2.4 : 1.1));
            contours.AddRange(lines.Select(line => (level, line)));
        }

        return contours;
    }

    private static void Edge(IDrawing drawing, Field beyond, Hatch hatch)
    {
        drawing.Path(Simplification.Simplify(ContourTracer.Areas(beyond, 0), LineTolerance), Look.Filled(Paint.Hatched(hatch)) with { Opacity = 0.5 });
        var edge = Simplification.Simplify(new ContourTracer(beyond).Trace(0), LineTolerance);
        drawing.Path(edge, Look.Line(Paint.White, 6.5));
        drawing.Path(edge, Look.Line(Paint.Black, 3));
    }

    private static void HandOvers(IDrawing drawing, IReadOnlyList<Polyline> lines)
    {
        var simple = Simplification.Simplify(lines, LineTolerance);
        drawing.Path(simple, Look.Line(Paint.Black, 4.5) with { Opacity = 0.6 });
        drawing.Path(simple, Look.Line(Paint.White, 2.5) with { Dashes = (9, 6) });
    }
}
