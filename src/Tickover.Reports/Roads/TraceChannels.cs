using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Roads;

/// <summary>The channels of a road log: speed, throttle or pressure, λ of each bank with the means of its points.</summary>
internal static class TraceChannels
{
    private const double LineWidth = 1.5;
    private const double MeanWidth = 3;
    private const double LeastLambda = 0.8;
    private const double MostLambda = 1.1;
    private const double RichestShown = 0.6;
    private const double LeanestShown = 1.4;
    private const double Tail = 0.02;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;
    private static readonly Paint[] OfBanks = [Paint.Theme("series-1"), Paint.Theme("series-2"), Paint.Theme("series-3"), Paint.Theme("series-4")];

    internal static void Draw(SvgDrawing drawing, TraceView view, TraceFrame frame)
    {
        var trace = view.Trace;
        Channel(drawing, frame, frame.Speed, trace.Seconds, trace.SpeedRpm, "Engine speed, rpm", "#,0", 0);
        if (trace.ThrottleDegrees is { } throttle)
        {
            Channel(drawing, frame, frame.Load, trace.Seconds, throttle, "Throttle, degrees from seated", "0", 0);
        }
        else if (trace.ManifoldKilopascals is { } pressure)
        {
            Channel(drawing, frame, frame.Load, trace.Seconds, pressure, "Manifold pressure, kPa absolute", "0", null);
        }

        Lambda(drawing, view, frame);
    }

    private static void Channel(SvgDrawing drawing, TraceFrame frame, Box box, IReadOnlyList<double> seconds, IReadOnlyList<double?> channel, string heading, string format, double? from)
    {
        var known = channel.OfType<double>().ToArray();
        var (least, most) = known.Length == 0 ? (0, 1) : (from ?? known.Min(), known.Max());
        var scale = new Scale(ScaleKind.Linear, (least, Math.Max(most, least + 1)), (box.Bottom, box.Top));
        Axis(drawing, box, scale, heading, Ticks.Nice(scale.Values.From, scale.Values.To, 4), format);
        drawing.Path(TraceLines.Of(seconds, channel, frame.Time, scale), Look.Line(Paint.Ink, LineWidth));
    }

    private static void Axis(SvgDrawing drawing, Box box, Scale scale, string heading, IReadOnlyList<double> ticks, string format)
    {
        drawing.Text(heading, new ChartPoint(0, box.Top - 10), new Lettering { Anchor = Anchor.Start, Bold = true, Halo = Paint.Surface });
        foreach (var tick in ticks)
        {
            var y = scale.ToPlace(tick);
            drawing.Line(new ChartPoint(box.Left, y), new ChartPoint(box.Right, y), Look.Line(Paint.Hair, 1));
            drawing.Text(tick.ToString(format, C), new ChartPoint(box.Left - 8, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }
    }

    private static void Lambda(SvgDrawing drawing, TraceView view, TraceFrame frame)
    {
        var box = frame.Lambda;
        var known = view.Trace.Lambdas.SelectMany(l => l.Lambda).OfType<double>().Order().ToArray();
        var (rich, lean) = known.Length == 0 ? (LeastLambda, MostLambda) : (known[(int)(Tail * (known.Length - 1))], known[(int)((1 - Tail) * (known.Length - 1))]);
        (double From, double To) range = (Math.Clamp(rich, RichestShown, LeastLambda), Math.Clamp(lean, MostLambda, LeanestShown));
        var scale = new Scale(ScaleKind.Linear, range, (box.Bottom, box.Top));
        Axis(drawing, box, scale, frame.IsPhone ? "λ, lag taken off" : "λ, the lag of the sensor taken off; lean is up", Ticks.Nice(range.From, range.To, 7), "0.0#");
        var one = scale.ToPlace(1);
        drawing.Line(new ChartPoint(box.Left, one), new ChartPoint(box.Right, one), Look.Line(Paint.Ink2, 2));
        for (var bank = 0; bank < view.Trace.Lambdas.Count; bank++)
        {
            Bank(drawing, view, frame, scale, bank);
        }

        Legend(drawing, view, frame);
    }

    private static void Bank(SvgDrawing drawing, TraceView view, TraceFrame frame, Scale scale, int index)
    {
        var lambda = view.Trace.Lambdas[index];
        var lines = TraceLines.Of(view.Trace.Seconds, lambda.Lambda, frame.Time, scale).SelectMany(l => Clipping.ToBox(l, frame.Lambda));
        drawing.Path(lines, new Look { Stroke = Of(index), Width = LineWidth, Dashes = Dashes(index) });
        foreach (var point in view.Points.Where(p => p.Bank == lambda.Bank || view.Trace.Lambdas.Count == 1))
        {
            var (from, to) = frame.Span(point.StartSeconds, point.StartSeconds + point.Seconds);
            var y = Math.Clamp(scale.ToPlace(point.Lambda), frame.Lambda.Top, frame.Lambda.Bottom);
            drawing.Line(new ChartPoint(from, y), new ChartPoint(Math.Max(to, from + 2), y), Look.Line(Paint.Ink, MeanWidth));
        }
    }

    // Beside the heading on a wide page, under the axis on a phone: which line is which bank.
    private static void Legend(SvgDrawing drawing, TraceView view, TraceFrame frame)
    {
        var names = view.Trace.Lambdas.Select(l => l.Bank is { } bank ? string.Create(C, $"bank {bank}") : "whole engine").Append("mean of a point").ToArray();
        const double sample = 26;
        const double gap = 14;
        var lettering = new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2, Halo = Paint.Surface };
        var x = frame.Lambda.Right - names.Sum(n => sample + 6 + gap + lettering.WidthOf(n)) + gap;
        if (frame.IsPhone)
        {
            names = [.. names.Select(n => n.Replace("mean of a point", "mean", StringComparison.Ordinal).Replace("whole engine", "engine", StringComparison.Ordinal))];
            x = frame.Lambda.Right - names.Sum(n => sample + 6 + gap + lettering.WidthOf(n)) + gap;
        }

        for (var i = 0; i < names.Length; i++)
        {
            var mean = i == names.Length - 1;
            var y = frame.Lambda.Top - 15;
            drawing.Line(new ChartPoint(x, y), new ChartPoint(x + sample, y), mean ? Look.Line(Paint.Ink, MeanWidth) : new Look { Stroke = Of(i), Width = 2.5, Dashes = Dashes(i) });
            drawing.Text(names[i], new ChartPoint(x + sample + 6, y + 5), lettering);
            x += sample + 6 + gap + lettering.WidthOf(names[i]);
        }
    }

    private static Paint Of(int index) => OfBanks[index % OfBanks.Length];

    // Banks differ by dash as well as by colour.
    private static (double Dash, double Gap)? Dashes(int index) => index == 0 ? null : (6, 2);
}
