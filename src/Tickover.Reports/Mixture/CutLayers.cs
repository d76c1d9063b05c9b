using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>The layers of a cut's drawing, from the ground up.</summary>
internal sealed class CutLayers(IDrawing drawing, CutFrame frame, IReadOnlyList<CutSample> samples, CrossSectionView view)
{
    private static readonly Paint BandPaint = Paint.Theme("series-1");
    private readonly LabelBoard _board = new(frame.Plot.Grown(-2));

    private Box Plot => frame.Plot;

    internal void Draw()
    {
        NoAnswers();
        using (drawing.ClippedTo([Polyline.Rectangle(Plot)]))
        {
            Target();
            Band();
            HandOvers();
            Lines();
        }

        drawing.Plate(Plot, 0, Look.Line(Paint.Ink, 1.5));
        Spot();
        Names();
        Axes();
    }

    // Two lines of different figure and name: a trial is dashed whatever its colour
    private void Lines()
    {
        drawing.Path(Pieces(s => s.Fitted), Look.Line(Paint.Ink, 3));
        if (view.Trial is not null)
        {
            drawing.Path(Pieces(s => s.Trial), Look.Line(Paint.Surface, 5));
            drawing.Path(Pieces(s => s.Trial), Look.Line(Paint.Mark, 3) with { Dashes = (10, 5) });
        }
    }

    private void Target()
    {
        var area = Between(samples, s => s.Target.Richest, s => s.Target.Leanest);
        drawing.Path([area], new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1.5 });
    }

    private void Band()
    {
        var band = view.Fitted.RelativeBand;
        foreach (var run in Runs())
        {
            var area = Between(run, s => s.Fitted!.Value * (1 - band), s => s.Fitted!.Value * (1 + band));
            drawing.Path([area], Look.Filled(BandPaint) with { Opacity = 0.18 });
            drawing.Path([area], Look.Line(BandPaint, 1.5) with { Dashes = (2, 3) });
        }
    }

    private void HandOvers()
    {
        foreach (var x in Changes().Select(c => c.Place))
        {
            drawing.Line(
                new ChartPoint(x, Plot.Top), new ChartPoint(x, Plot.Bottom), Look.Line(Paint.Ink2, 1.5) with { Dashes = (9, 6) });
        }
    }

    private void NoAnswers()
    {
        foreach (var run in Split(samples, (a, b) => a.Why == b.Why).Where(r => r[0].Why is not null))
        {
            // To the next sample, so that no strip is left between two reasons
            var next = samples[Math.Min(samples.Count - 1, Index(run[^1]) + 1)];
            var (left, right) = (frame.Along.ToPlace(run[0].Along), frame.Along.ToPlace(next.Along));
            drawing.Plate(new Box(left, Plot.Top, Math.Max(0, right - left), Plot.Height), 0, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));
        }
    }

    private int Index(CutSample sample) => samples.TakeWhile(s => !ReferenceEquals(s, sample)).Count();

    private void Spot()
    {
        var along = view.Axis == CrossSectionAxis.Speed ? view.Spot.SpeedRpm : view.Spot.ThrottleDegrees;
        var x = Math.Clamp(frame.Along.ToPlace(along), Plot.Left, Plot.Right);
        drawing.Line(new ChartPoint(x, Plot.Top), new ChartPoint(x, Plot.Bottom), Look.Line(Paint.Mark, 2));
        if (samples.MinBy(s => Math.Abs(s.Along - along))?.Fitted is { } lambda)
        {
            var place = new ChartPoint(x, frame.Lambda.ToPlace(lambda));
            drawing.Circle(place, 8, new Look { Fill = Paint.Surface, Stroke = Paint.Mark, Width = 4 });
            _board.Take(Box.Around(place, 24, 24));
        }

        _board.Take(new Box(x - 2, Plot.Top, 4, Plot.Height));
    }

    private void Names()
    {
        // Of two lines the upper has its name above it and the lower below
        NameOnLine("fitted", Paint.Ink, s => s.Fitted, s => s.Trial > s.Fitted ? 1 : -1);
        if (view.Trial is not null)
        {
            NameOnLine("trial", Paint.Mark, s => s.Trial, s => s.Trial > s.Fitted ? -1 : 1);
        }

        NameOnLine("target", Paint.Ink2, s => (s.Target.Richest + s.Target.Leanest) / 2, _ => 0);
        var lettering = new Lettering { Paint = Paint.Ink2 };
        foreach (var run in Split(samples, (a, b) => a.Feeding == b.Feeding && a.Why == b.Why))
        {
            var (left, right) = (frame.Along.ToPlace(run[0].Along), frame.Along.ToPlace(run[^1].Along));
            var name = run[0].Why?.ShortWords ?? MapLabels.Name(run[0].Feeding);
            // Names stand over the plot, each over its own stretch
            if (lettering.WidthOf(name) <= right - left)
            {
                drawing.Text(name, new ChartPoint((left + right) / 2, Plot.Top - 8), lettering);
            }
        }
    }

    private void NameOnLine(string name, Paint paint, Func<CutSample, double?> value, Func<CutSample, int> side)
    {
        var lettering = new Lettering { Size = 15, Bold = true, Paint = paint, Halo = Paint.Surface };
        foreach (var sample in samples.Reverse().Where(s => value(s) is not null))
        {
            var place = new ChartPoint(frame.Along.ToPlace(sample.Along), frame.Lambda.ToPlace(value(sample)!.Value) + side(sample) * 14);
            var box = Box.Around(place, lettering.WidthOf(name) + 4, 18);
            if (_board.TryTake(box))
            {
                drawing.Text(name, place with { Y = place.Y + 5 }, lettering);
                return;
            }
        }
    }

    private void Axes()
    {
        var full = view.Size == PictureSize.Full;
        var lettering = new Lettering { Size = full ? 15 : 14 };
        var tick = Look.Line(Paint.Ink, 1.5);
        var values = frame.Along.Values;
        var speed = view.Axis == CrossSectionAxis.Speed;
        foreach (var along in speed ? Ticks.Nice(values.From, values.To, full ? 8 : 4) : Ticks.ForOpening(frame.Along, 34))
        {
            var x = frame.Along.ToPlace(along);
            drawing.Line(new ChartPoint(x, Plot.Bottom), new ChartPoint(x, Plot.Bottom + 6), tick);
            drawing.Text(speed ? Shown.Speed(along) : Shown.Opening(along), new ChartPoint(x, Plot.Bottom + 23), lettering);
        }

        foreach (var lambda in Ticks.Nice(frame.Lambda.Values.From, frame.Lambda.Values.To, full ? 7 : 5))
        {
            var y = frame.Lambda.ToPlace(lambda);
            drawing.Line(new ChartPoint(Plot.Left - 6, y), new ChartPoint(Plot.Left, y), tick);
            drawing.Text(Shown.Lambda(lambda), new ChartPoint(Plot.Left - 9, y + 5), lettering with { Anchor = Anchor.End });
        }

        drawing.Text("λ", new ChartPoint(Plot.Left - 20, Plot.Top - 10), lettering with { Bold = true });
        drawing.Text(
            speed ? "engine speed, rpm" : "throttle open", new ChartPoint(Plot.Centre.X, Plot.Bottom + 43), lettering with { Paint = Paint.Ink2 });
    }

    private IEnumerable<(double Place, CutSample From)> Changes() =>
        samples.Zip(samples.Skip(1)).Where(p => p.First.Fitted is not null && p.Second.Fitted is not null && p.First.Feeding != p.Second.Feeding)
            .Select(p => (frame.Along.ToPlace((p.First.Along + p.Second.Along) / 2), p.First));

    private IEnumerable<IReadOnlyList<CutSample>> Runs() =>
        Split(samples, (a, b) => a.Fitted is null == b.Fitted is null).Where(r => r[0].Fitted is not null);

    private IEnumerable<Polyline> Pieces(Func<CutSample, double?> value) =>
        Split(samples, (a, b) => value(a) is null == value(b) is null).Where(r => value(r[0]) is not null)
            .Select(run => new Polyline([.. run.Select(s => Place(s, value(s)!.Value))], Closed: false));

    private Polyline Between(IReadOnlyList<CutSample> run, Func<CutSample, double> low, Func<CutSample, double> high) =>
        new([.. run.Select(s => Place(s, low(s))), .. run.Reverse().Select(s => Place(s, high(s)))], Closed: true);

    private ChartPoint Place(CutSample sample, double lambda) => new(frame.Along.ToPlace(sample.Along), frame.Lambda.ToPlace(lambda));

    internal static IEnumerable<IReadOnlyList<CutSample>> Split(IReadOnlyList<CutSample> samples, Func<CutSample, CutSample, bool> alike)
    {
        var start = 0;
        for (var k = 1; k <= samples.Count; k++)
        {
            if (k == samples.Count || !alike(samples[k - 1], samples[k]))
            {
                yield return [.. samples.Skip(start).Take(k - start)];
                start = k;
            }
        }
    }
}
