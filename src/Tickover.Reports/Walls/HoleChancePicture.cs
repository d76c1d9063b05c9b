using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>The chance of a hole over the years: always the band, with the limit across it.</summary>
public static class HoleChancePicture
{
    private const double LeastTop = 0.1;

    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show; its course is not empty.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(WallView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var (course, limit) = (view.Analysis.Course, view.Survey.Limits.HoleChance);
        var top = Math.Min(1, Math.Max(LeastTop, Math.Max(2 * limit, course.Max(y => y.Chance.High) * 1.1)));
        var frame = new PlotFrame(view.Size, (0, WallAnalyst.Horizon), (0, top));
        var drawing = new SvgDrawing(view.IdPrefix);
        Line(y => y.Chance.High, out var high);
        Line(y => y.Chance.Low, out var low);
        Line(y => y.Chance.Middle, out var middle);
        drawing.Path([new Polyline([.. high, .. low.Reverse()], Closed: true)], Look.Filled(Paint.Band));
        frame.Draw(drawing, "Chance of a hole anywhere", "years from now", v => (v * 100).ToString("0.#", CultureInfo.InvariantCulture) + "\u202F%", v => v.ToString("0", CultureInfo.InvariantCulture));
        drawing.Path([new Polyline(high, Closed: false)], Look.Line(Paint.Ink, 2));
        drawing.Path([new Polyline(low, Closed: false)], Look.Line(Paint.Ink, 2));
        drawing.Path([new Polyline(middle, Closed: false)], new Look { Stroke = Paint.Ink, Width = 3, Dashes = (2, 5) });
        Limit(drawing, frame, limit);
        Words(drawing, frame, view, course[^1]);
        return drawing.ToSvg(new SvgFrame { Width = frame.Width, Height = frame.Height, ClassName = "chance-picture", Label = WallSentence.OfYears(view.Analysis) });

        void Line(Func<HoleYear, double> value, out ChartPoint[] points) => points = [.. course.Select(y => frame.At(y.Years, Math.Min(top, value(y))))];
    }

    private static void Limit(SvgDrawing drawing, PlotFrame frame, double limit)
    {
        var (from, to) = (frame.At(0, limit), frame.At(WallAnalyst.Horizon, limit));
        drawing.Line(from, to, new Look { Stroke = Paint.Mark, Width = 3, Dashes = (12, 6) });
        drawing.Text($"limit {WallFigures.Percent(limit)}", new ChartPoint(frame.Plot.Left + 8, from.Y - 7), new Lettering { Anchor = Anchor.Start, Paint = Paint.Mark, Bold = true, Halo = Paint.Surface });
    }

    // At the right end of each line, where it does not meet the limit or the line above it; the page says the same in words.
    private static void Words(SvgDrawing drawing, PlotFrame frame, WallView view, HoleYear end)
    {
        const double apart = 22, above = 7, inside = 20;
        var (slow, fast) = view.Survey.Growth;
        (double Value, string Text)[] said =
        [
            (end.Chance.High, string.Create(CultureInfo.InvariantCulture, $"fast, power {fast:0.##}")),
            (end.Chance.Middle, "between"),
            (end.Chance.Low, string.Create(CultureInfo.InvariantCulture, $"slow, power {slow:0.##}")),
        ];
        var taken = new List<double> { frame.Up.ToPlace(view.Survey.Limits.HoleChance) };
        foreach (var (value, text) in said)
        {
            var line = frame.Up.ToPlace(Math.Min(frame.Up.Values.To, value));
            var y = line < frame.Plot.Top + inside ? line + inside : line - above;
            if (taken.TrueForAll(t => Math.Abs(t - y) >= apart))
            {
                drawing.Text(text, new ChartPoint(frame.Plot.Right - 6, y), new Lettering { Anchor = Anchor.End, Halo = Paint.Surface });
                taken.Add(y);
            }
        }
    }
}
