using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Fits;

/// <summary>Draws band, marks, means and axes.</summary>
internal sealed class ResidualLayers(IDrawing drawing, ResidualFrame frame, IReadOnlyList<Residual> residuals, PictureSize size)
{
    private const double Radius = 5.5;
    private const double Diamond = 7.5;
    private static readonly (string Regime, string Short, double From, double To)[] Strips =
        [("idle", "idle", 0, 4), ("progression", "progr.", 4, 17), ("cruise", "cruise", 17, 48), ("full load", "full", 48, 90)];

    private bool Full => size == PictureSize.Full;

    private Lettering Quiet => new() { Size = Full ? 15 : 14, Paint = Paint.Ink2 };

    internal void Draw()
    {
        Plot(frame.Over, frame.OffOver);
        Plot(frame.Along, frame.OffAlong);
        foreach (var strip in Strips)
        {
            Strip(strip);
        }

        OpeningAxis();
        SpeedAxis();
        foreach (var residual in residuals)
        {
            Mark(residual, new ChartPoint(frame.Opening.ToPlace(Math.Clamp(residual.Degrees, 0, 90)), frame.OffOver.ToPlace(residual.Off)));
            Mark(residual, new ChartPoint(frame.Speed.ToPlace(residual.SpeedRpm), frame.OffAlong.ToPlace(residual.Off)));
        }

        foreach (var bias in RegimeBias.Of(residuals))
        {
            Mean(bias);
        }

        Legend();
    }

    private void Plot(Box plot, Scale off)
    {
        // Every reading has a band of its own; the middle one stands for all
        var halves = residuals.Select(r => r.Half).Order().ToList();
        if (halves.Count > 0)
        {
            var half = halves[halves.Count / 2];
            drawing.Plate(new Box(plot.Left, off.ToPlace(half), plot.Width, off.ToPlace(-half) - off.ToPlace(half)), 0, new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 });
        }

        drawing.Line(new ChartPoint(plot.Left, off.ToPlace(0)), new ChartPoint(plot.Right, off.ToPlace(0)), Look.Line(Paint.Ink, 1.5));
        drawing.Plate(plot, 0, new Look { Stroke = Paint.Hair });
        foreach (var tick in Ticks.Nice(off.Values.From, off.Values.To, 6))
        {
            var y = off.ToPlace(tick);
            drawing.Line(new ChartPoint(plot.Left - 5, y), new ChartPoint(plot.Left, y), Look.Line(Paint.Ink, 1.5));
            drawing.Text(Shown.LambdaDifference(tick), new ChartPoint(plot.Left - 8, y + 5), new Lettering { Anchor = Anchor.End });
        }

        drawing.Text("leaner than fitted", new ChartPoint(plot.Left + 6, plot.Top + 16), Quiet with { Size = 14, Anchor = Anchor.Start });
        drawing.Text("richer", new ChartPoint(plot.Left + 6, plot.Bottom - 7), Quiet with { Size = 14, Anchor = Anchor.Start });
    }

    private void Strip((string Regime, string Short, double From, double To) strip)
    {
        var (left, right) = (frame.Opening.ToPlace(strip.From), frame.Opening.ToPlace(strip.To));
        if (strip.From > 0)
        {
            drawing.Line(new ChartPoint(left, frame.Over.Top - 6), new ChartPoint(left, frame.Over.Bottom), Look.Line(Paint.Ink2, 1) with { Dashes = (3, 4) });
        }

        drawing.Text(Full ? strip.Regime : strip.Short, new ChartPoint((left + right) / 2, frame.Over.Top - 10), new Lettering { Size = Full ? 15 : 14, Bold = true });
    }

    private void OpeningAxis()
    {
        foreach (var opening in Ticks.ForOpening(frame.Opening, Full ? 34 : 30))
        {
            var x = frame.Opening.ToPlace(opening);
            drawing.Line(new ChartPoint(x, frame.Over.Bottom), new ChartPoint(x, frame.Over.Bottom + 6), Look.Line(Paint.Ink, 1.5));
            drawing.Text(Shown.Opening(opening), new ChartPoint(x, frame.Over.Bottom + 22), new Lettering());
        }

        drawing.Text("λ read less λ fitted", new ChartPoint(2, 16), Quiet with { Anchor = Anchor.Start });
        drawing.Text("throttle open", new ChartPoint(frame.Over.Centre.X, frame.Over.Bottom + 44), Quiet);
    }

    private void SpeedAxis()
    {
        foreach (var rpm in Ticks.Nice(frame.Speed.Values.From, frame.Speed.Values.To, Full ? 8 : 4))
        {
            var x = frame.Speed.ToPlace(rpm);
            drawing.Line(new ChartPoint(x, frame.Along.Bottom), new ChartPoint(x, frame.Along.Bottom + 6), Look.Line(Paint.Ink, 1.5));
            drawing.Text(Shown.Speed(rpm), new ChartPoint(x, frame.Along.Bottom + 22), new Lettering());
        }

        drawing.Text("engine speed, rpm", new ChartPoint(frame.Along.Centre.X, frame.Along.Bottom + 44), Quiet);
    }

    // Inside the band a disc, outside a diamond; the second bank is hollow
    private void Mark(Residual residual, ChartPoint at)
    {
        var ink = Paint.Theme(residual.IsOutside ? "out" : "within");
        var look = residual.Bank < 2 ? new Look { Fill = ink, Stroke = Paint.Surface, Width = 1.2 } : new Look { Fill = Paint.Surface, Stroke = ink, Width = 2.2 };
        if (!residual.IsOutside)
        {
            drawing.Circle(at, Radius, look);
            return;
        }

        drawing.Path([new Polyline([new(at.X, at.Y - Diamond), new(at.X + Diamond, at.Y), new(at.X, at.Y + Diamond), new(at.X - Diamond, at.Y)], Closed: true)], look);
    }

    // A bar at the mean with a bracket of what chance explains; two banks stand beside each other
    private void Mean(RegimeBias bias)
    {
        var strip = Strips.First(s => string.Equals(s.Regime, bias.Regime, StringComparison.Ordinal));
        var (left, right) = (frame.Opening.ToPlace(strip.From), frame.Opening.ToPlace(strip.To));
        var middle = left + (right - left) * bias.Bank switch { 1 => 0.3, 2 => 0.7, _ => 0.5 };
        var (mean, top, bottom) = (frame.OffOver.ToPlace(bias.Mean), frame.OffOver.ToPlace(bias.Mean + bias.Error), frame.OffOver.ToPlace(bias.Mean - bias.Error));
        foreach (var (look, grown) in new[] { (Look.Line(Paint.Surface, 7), 1.5), (Look.Line(Paint.Ink, 3), 0.0) })
        {
            drawing.Line(new ChartPoint(middle - 15 - grown, mean), new ChartPoint(middle + 15 + grown, mean), look);
            drawing.Line(new ChartPoint(middle, top), new ChartPoint(middle, bottom), look with { Width = look.Width - 1 });
        }

        if (bias.IsBias)
        {
            var y = bias.Mean > 0 ? Math.Max(frame.Over.Top + 34, top - 8) : Math.Min(frame.Over.Bottom - 24, bottom + 18);
            drawing.Text(ResidualWords.Bias(bias), new ChartPoint(middle, y), new Lettering { Bold = true, Halo = Paint.Surface });
        }
    }

    private void Legend()
    {
        var y = frame.Along.Bottom + (Full ? 76 : 72);
        var banks = residuals.Any(r => r.Bank > 1);
        List<(Action<ChartPoint> Draw, string Words)> entries =
        [
            (at => drawing.Circle(at, Radius, new Look { Fill = Paint.Theme("within"), Stroke = Paint.Surface, Width = 1.2 }), banks ? "bank 1" : "a reading"),
            (at => drawing.Path([new Polyline([new(at.X, at.Y - Diamond), new(at.X + Diamond, at.Y), new(at.X, at.Y + Diamond), new(at.X - Diamond, at.Y)], Closed: true)], Look.Filled(Paint.Theme("out"))), "outside its band"),
            (at => drawing.Plate(Box.Around(at, 24, 14), 0, new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 }), "90 % band"),
            (at => drawing.Line(at with { X = at.X - 12 }, at with { X = at.X + 12 }, Look.Line(Paint.Ink, 3)), "mean"),
        ];
        if (banks)
        {
            entries.Insert(1, (at => drawing.Circle(at, Radius, new Look { Fill = Paint.Surface, Stroke = Paint.Theme("within"), Width = 2.2 }), "bank 2"));
        }

        var x = frame.Along.Left;
        foreach (var (draw, words) in entries)
        {
            var lettering = new Lettering { Anchor = Anchor.Start };
            var width = 36 + lettering.WidthOf(words);
            if (x + width > frame.Width)
            {
                (x, y) = (frame.Along.Left, y + 24);
            }

            draw(new ChartPoint(x + 12, y));
            drawing.Text(words, new ChartPoint(x + 28, y + 5), lettering);
            x += width + 8;
        }
    }
}
