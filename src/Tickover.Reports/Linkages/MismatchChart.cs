using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>How far each carburettor stands from the mean over the pedal's travel, with the limit and what play does.</summary>
internal sealed class MismatchChart
{
    private const double WidestAir = 0.20;       // as on the rings: further out is further out
    private const double NarrowestDegrees = 1;
    private const double WidestDegrees = 6;
    private const double BandOpacity = 0.16;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    private readonly SvgDrawing _drawing;
    private readonly Box _box;
    private readonly Scale _down;
    private readonly Scale _up;
    private readonly LinkageView _view;
    private readonly Func<PlateMoment, double> _value;
    private readonly Func<PlateMoment, double> _play;

    private MismatchChart(SvgDrawing drawing, LinkageView view, Box box, double range, (Func<PlateMoment, double> Value, Func<PlateMoment, double> Play) of)
    {
        (_drawing, _view, _box) = (drawing, view, box);
        (_value, _play) = of;
        _down = new Scale(ScaleKind.Linear, (0, 1), (box.Left, box.Right));
        _up = new Scale(ScaleKind.Linear, (-range, range), (box.Bottom, box.Top));
    }

    internal static void Air(SvgDrawing drawing, LinkageView view, LinkageFrame frame, LinkageMoment now)
    {
        var chart = new MismatchChart(drawing, view, frame.Air, WidestAir, (p => p.DeviationPart, p => p.PlayPart));
        chart.Draw("Air against the mean, % by the gap", v => Signed(v * 100, "0"), m => m.LimitPart, now);
    }

    internal static void Angle(SvgDrawing drawing, LinkageView view, LinkageFrame frame, LinkageMoment now)
    {
        var worst = view.Course.SelectMany(m => m.Plates).Max(p => Math.Abs(p.DeviationDegrees));
        var range = Math.Clamp(Math.Ceiling(worst * 1.2), NarrowestDegrees, WidestDegrees);
        var chart = new MismatchChart(drawing, view, frame.Angle, range, (p => p.DeviationDegrees, p => p.PlayDegrees));
        chart.Draw("Angle against the mean, degrees", v => Signed(v, "0.#"), m => Math.Min(m.LimitDegrees, range), now);
    }

    private void Draw(string heading, Func<double, string> words, Func<LinkageMoment, double> limit, LinkageMoment now)
    {
        _drawing.Text(heading, new ChartPoint(_box.Left - 40, _box.Top - 12), new Lettering { Anchor = Anchor.Start, Bold = true });
        Axes(words);
        using (_drawing.ClippedTo([Polyline.Rectangle(_box)]))
        {
            var course = _view.Course;
            _drawing.Path([Band(course, m => limit(m), m => -limit(m))], new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 });
            for (var i = 0; i < course[0].Plates.Count; i++)
            {
                var at = i;
                _drawing.Path([Band(course, m => _value(m.Plates[at]) + _play(m.Plates[at]), m => _value(m.Plates[at]) - _play(m.Plates[at]))], new Look { Fill = LinkageLines.Paint(at), Opacity = BandOpacity });
            }

            _drawing.Line(new ChartPoint(_box.Left, _up.ToPlace(0)), new ChartPoint(_box.Right, _up.ToPlace(0)), Look.Line(Paint.Ink2, 1));
            for (var i = 0; i < course[0].Plates.Count; i++)
            {
                var at = i;
                _drawing.Path([new Polyline([.. course.Select(m => Point(m.Down, _value(m.Plates[at])))], Closed: false)], LinkageLines.Look(at));
            }
        }

        Now(now);
    }

    private void Axes(Func<double, string> words)
    {
        foreach (var tick in Ticks.Nice(_up.Values.From, _up.Values.To, 5))
        {
            var y = _up.ToPlace(tick);
            _drawing.Line(new ChartPoint(_box.Left, y), new ChartPoint(_box.Right, y), Look.Line(Paint.Hair, 1));
            _drawing.Text(words(tick), new ChartPoint(_box.Left - 6, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }

        foreach (var tick in new[] { 0, 0.25, 0.5, 0.75, 1 })
        {
            var x = _down.ToPlace(tick);
            _drawing.Line(new ChartPoint(x, _box.Bottom), new ChartPoint(x, _box.Bottom + 5), Look.Line(Paint.Ink2, 1));
            _drawing.Text(
                (tick * 100).ToString("0", C) + (tick is 1 ? "\u202F%" : ""), new ChartPoint(x, _box.Bottom + 19), new Lettering { Paint = Paint.Ink2, Anchor = tick is 1 ? Anchor.End : Anchor.Middle });
        }

        _drawing.Text("pedal down", new ChartPoint(_box.Left, _box.Bottom + 36), new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2 });
    }

    private void Now(LinkageMoment now)
    {
        var x = _down.ToPlace(now.Down);
        _drawing.Line(new ChartPoint(x, _box.Top), new ChartPoint(x, _box.Bottom), Look.Line(Paint.Mark, 2));
        for (var i = 0; i < now.Plates.Count; i++)
        {
            var value = Math.Clamp(_value(now.Plates[i]), _up.Values.From, _up.Values.To);
            _drawing.Circle(Point(now.Down, value), 5, new Look { Fill = Paint.Surface, Stroke = LinkageLines.Paint(i), Width = LinkageLines.Width });
        }
    }

    private Polyline Band(IReadOnlyList<LinkageMoment> course, Func<LinkageMoment, double> high, Func<LinkageMoment, double> low) => new(
        [.. course.Select(m => Point(m.Down, high(m))), .. course.Reverse().Select(m => Point(m.Down, low(m)))],
        Closed: true);

    // Far outside the box the clip would still be right, but the numbers would only swell the file.
    private ChartPoint Point(double down, double value)
    {
        var far = 3 * _up.Values.To;
        return new ChartPoint(_down.ToPlace(down), _up.ToPlace(Math.Clamp(value, -far, far)));
    }

    private static string Signed(double value, string format)
    {
        var text = Math.Abs(value).ToString(format, C);
        return value > 1e-9 ? "+" + text : value < -1e-9 ? "\u2212" + text : text;
    }
}
