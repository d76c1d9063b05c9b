using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Leaks;

namespace Tickover.Reports.Leaks;

/// <summary>The curve of a leak test: as read, at one temperature, the line through it, and how the smallest leak that shows would have fallen.</summary>
public static class LeakPicture
{
    private const double SecondsPerMinute = 60;
    private const double LitresPerCubicMetre = 1000;

    /// <summary>Draws it for a page.</summary>
    /// <param name="analysis">The test.</param>
    /// <param name="size">For a wide page or a phone.</param>
    /// <param name="idPrefix">Begins every id inside.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(LeakAnalysis analysis, PictureSize size, string idPrefix)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var (drawing, frame) = (new SvgDrawing(idPrefix), Frame(analysis, size));
        Draw(drawing, analysis, size, frame);
        return drawing.ToSvg(new SvgFrame { Width = frame.Width, Height = Height(frame, size), ClassName = "leak-picture", Label = Sentence(analysis) });
    }

    internal static string Sentence(LeakAnalysis analysis) => $"{analysis.Sheet.Name}: {analysis.Verdict.Heading}. {LeakWords.Smallest(analysis)}";

    internal static double Height(PlotFrame frame, PictureSize size) => frame.Height + KeyHeight(size);

    internal static PlotFrame Frame(LeakAnalysis analysis, PictureSize size)
    {
        var all = Pressures(analysis);
        var margin = Margin(all);
        return new PlotFrame(size, (analysis.Curve[0].Minutes, analysis.Curve[^1].Minutes), (all.Min() - margin, all.Max() + margin));
    }

    internal static void Draw(IDrawing drawing, LeakAnalysis analysis, PictureSize size, PlotFrame frame)
    {
        var (curve, unit) = (analysis.Curve, analysis.Sheet.Unit);
        var (all, begin) = (Pressures(analysis), curve[0].FittedPascals);
        var places = all.Max() - all.Min() + 2 * Margin(all) < 3 ? "0.0#" : "0.#";
        frame.Draw(drawing, $"Pressure above the air around, {unit.Words}", "minutes", v => v.ToString(places, CultureInfo.InvariantCulture), v => v.ToString("0.#", CultureInfo.InvariantCulture));
        drawing.Line(frame.At(curve[0].Minutes, begin / unit.Pascals), frame.At(curve[^1].Minutes, (begin - Fall(analysis)) / unit.Pascals), new Look { Stroke = Paint.Mark, Width = 3, Dashes = (12, 6) });
        drawing.Line(frame.At(curve[0].Minutes, begin / unit.Pascals), frame.At(curve[^1].Minutes, curve[^1].FittedPascals / unit.Pascals), Look.Line(Paint.Ink, 2.5));
        Points(drawing, frame, analysis);
        Key(drawing, frame, size);
    }

    // How far the smallest leak that shows would have let it fall, Pa.
    private static double Fall(LeakAnalysis analysis) => analysis.Rate.SmallestSeen / (analysis.Sheet.Litres / LitresPerCubicMetre) * analysis.Sheet.Minutes * SecondsPerMinute;

    private static double[] Pressures(LeakAnalysis analysis) =>
        [.. analysis.Curve.SelectMany(p => new[] { p.GaugePascals, p.CorrectedPascals, p.FittedPascals }).Append(analysis.Curve[0].FittedPascals - Fall(analysis)).Select(p => p / analysis.Sheet.Unit.Pascals)];

    private static double Margin(double[] all) => Math.Max(0.12 * (all.Max() - all.Min()), 0.01 * Math.Abs(all.Max()) + 1e-6);

    private static double KeyHeight(PictureSize size) => size is PictureSize.Phone ? 96 : 52;

    private static void Points(IDrawing drawing, PlotFrame frame, LeakAnalysis analysis)
    {
        var unit = analysis.Sheet.Unit.Pascals;
        drawing.Path([new Polyline([.. analysis.Curve.Select(p => frame.At(p.Minutes, p.GaugePascals / unit))], Closed: false)], new Look { Stroke = Paint.Ink2, Width = 1.5, Dashes = (3, 4) });
        foreach (var point in analysis.Curve)
        {
            AsRead(drawing, frame.At(point.Minutes, point.GaugePascals / unit));
            Corrected(drawing, frame.At(point.Minutes, point.CorrectedPascals / unit));
        }
    }

    private static void AsRead(IDrawing drawing, ChartPoint at) => drawing.Circle(at, 6, new Look { Fill = Paint.Surface, Stroke = Paint.Ink2, Width = 2 });

    private static void Corrected(IDrawing drawing, ChartPoint at) => drawing.Plate(Box.Around(at, 10, 10), 0, Look.Filled(Paint.Ink));

    private static void Key(IDrawing drawing, PlotFrame frame, PictureSize size)
    {
        var each = size is PictureSize.Phone ? (Rows: 4, Column: 0.0) : (Rows: 2, Column: 380.0);
        (Action<ChartPoint> Sign, string Text)[] signs =
        [
            (p => AsRead(drawing, p), "as read"),
            (p => Corrected(drawing, p), "at one temperature"),
            (p => drawing.Line(new ChartPoint(p.X - 14, p.Y), new ChartPoint(p.X + 14, p.Y), Look.Line(Paint.Ink, 2.5)), "line through it: the leak"),
            (p => drawing.Line(new ChartPoint(p.X - 14, p.Y), new ChartPoint(p.X + 14, p.Y), new Look { Stroke = Paint.Mark, Width = 3, Dashes = (12, 6) }), "the smallest leak that would show"),
        ];
        for (var i = 0; i < signs.Length; i++)
        {
            var at = new ChartPoint(26 + each.Column * (i / each.Rows), frame.Height + 12 + 22 * (i % each.Rows));
            signs[i].Sign(at);
            drawing.Text(signs[i].Text, new ChartPoint(at.X + 24, at.Y + 5), new Lettering { Anchor = Anchor.Start });
        }
    }
}
