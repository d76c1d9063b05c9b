using Tickover.Reports.Charts;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Roads;

/// <summary>A road log over its time: what the engine did in lanes on top, then speed, throttle or pressure, and λ of each bank; what was left out is hatched.</summary>
public static class TracePicture
{
    private const double BarInset = 3;
    private const double OpeningSize = 6;
    private const int FullTicks = 9;
    private const int PhoneTicks = 5;

    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(TraceView view) => Drawn(view, out var frame).ToSvg(Frame(view, frame));

    /// <summary>Draws it for a file of its own, in the colours of paper.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>A whole SVG file.</returns>
    public static string ToFile(TraceView view)
    {
        var drawing = Drawn(view, out var frame);
        return SvgFile.Of(drawing.ToSvg(Frame(view, frame)), frame.Width, frame.Height);
    }

    private static SvgDrawing Drawn(TraceView view, out TraceFrame frame)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        frame = new TraceFrame(view);
        Draw(drawing, view, frame);
        return drawing;
    }

    private static SvgFrame Frame(TraceView view, TraceFrame frame) =>
        new() { Width = frame.Width, Height = frame.Height, ClassName = "trace-picture", Label = TraceSentence.Of(view) };

    private static void Draw(SvgDrawing drawing, TraceView view, TraceFrame frame)
    {
        Shades(drawing, view.Trace, frame);
        TimeAxis(drawing, frame);
        Lanes(drawing, view.Trace, frame);
        Openings(drawing, view.Trace, frame);
        TraceChannels.Draw(drawing, view, frame);
    }

    // Steady stretches run down through all channels; what was left out is hatched.
    private static void Shades(SvgDrawing drawing, LogTrace trace, TraceFrame frame)
    {
        foreach (var stretch in trace.Stretches)
        {
            var (from, to) = frame.Span(stretch.StartSeconds, stretch.EndSeconds);
            drawing.Plate(new Box(from, frame.Speed.Top, to - from, frame.Lambda.Bottom - frame.Speed.Top), 0, new Look { Fill = Paint.Band, Opacity = 0.55 });
        }

        foreach (var span in trace.LeftOut)
        {
            var (from, to) = frame.Span(span.StartSeconds, span.EndSeconds);
            drawing.Plate(new Box(from, frame.All.Top, to - from, frame.All.Height), 0, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));
        }
    }

    private static void TimeAxis(SvgDrawing drawing, TraceFrame frame)
    {
        foreach (var tick in TraceTime.Ticks(frame.Time.Values.To, frame.IsPhone ? PhoneTicks : FullTicks))
        {
            var x = frame.Time.ToPlace(tick);
            drawing.Line(new ChartPoint(x, frame.Speed.Top), new ChartPoint(x, frame.Lambda.Bottom), Look.Line(Paint.Hair, 1));
            var words = TraceTime.Words(tick);
            var lettering = new Lettering { Paint = Paint.Ink2 };
            drawing.Text(words, new ChartPoint(Math.Min(x, frame.Width - lettering.WidthOf(words) / 2), frame.Lambda.Bottom + 18), lettering);
        }

        drawing.Text("minutes and seconds from the first row", new ChartPoint(frame.Speed.Left, frame.Lambda.Bottom + 38), new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2 });
    }

    private static void Lanes(SvgDrawing drawing, LogTrace trace, TraceFrame frame)
    {
        drawing.Text("Steady, and what the engine did", new ChartPoint(0, TraceFrame.Top - 10), new Lettering { Anchor = Anchor.Start, Bold = true });
        for (var row = 0; row < frame.Lanes.Count; row++)
        {
            var (lane, regime) = (frame.Lane(row), frame.Lanes[row]);
            Lane(drawing, lane, RegimeNames.Of(regime));
            foreach (var stretch in trace.Stretches.Where(s => s.Regime == regime))
            {
                var (from, to) = frame.Span(stretch.StartSeconds, stretch.EndSeconds);
                drawing.Plate(new Box(from, lane.Top + BarInset, to - from, lane.Height - 2 * BarInset), 0, Look.Filled(Paint.Ink));
            }
        }
    }

    private static void Lane(SvgDrawing drawing, Box lane, string name)
    {
        drawing.Line(new ChartPoint(0, lane.Bottom), new ChartPoint(lane.Right, lane.Bottom), Look.Line(Paint.Hair, 1));
        drawing.Text(name, new ChartPoint(lane.Left - 8, lane.Bottom - 5), new Lettering { Anchor = Anchor.End });
    }

    private static void Openings(SvgDrawing drawing, LogTrace trace, TraceFrame frame)
    {
        if (!frame.HasOpenings)
        {
            return;
        }

        var lane = frame.Lane(frame.Lanes.Count);
        Lane(drawing, lane, RegimeNames.Of(Regime.TipIn));
        foreach (var second in trace.TipInSeconds)
        {
            var (x, y) = (frame.Time.ToPlace(second), lane.Centre.Y);
            drawing.Path([new Polyline([new(x - OpeningSize, y + OpeningSize), new(x + OpeningSize, y + OpeningSize), new(x, y - OpeningSize)], Closed: true)], Look.Filled(Paint.Ink));
            drawing.Line(new ChartPoint(x, lane.Bottom), new ChartPoint(x, frame.Lambda.Bottom), new Look { Stroke = Paint.Ink2, Width = 1, Dashes = (3, 3) });
        }
    }
}
