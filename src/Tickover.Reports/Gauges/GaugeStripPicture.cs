using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Gauges;

namespace Tickover.Reports.Gauges;

/// <summary>A drive as a strip: the fuel there, what the needle says, and the best estimate with its band.</summary>
internal static class GaugeStripPicture
{
    private const double KeyHeight = 34;
    private const double Headroom = 1.08;

    private static readonly Look Truth = Look.Line(Paint.FuelEdge, 4);
    private static readonly Look Needle = new() { Stroke = Paint.Ink, Width = 2.5, Dashes = (9, 5) };
    private static readonly Look Estimate = Look.Line(Paint.Mark, 2.5);

    internal static PlotFrame Frame(IReadOnlyList<GaugeMoment> moments) =>
        new(PictureSize.Full, (0, Math.Max(1, moments[^1].Seconds)), (0, Headroom * moments.Max(m => Math.Max(m.NeedleLitres, Math.Max(m.ThereLitres, m.HighLitres)))));

    internal static double Height(PlotFrame frame) => frame.Height + KeyHeight;

    internal static void Draw(IDrawing drawing, IReadOnlyList<GaugeMoment> moments, PlotFrame frame)
    {
        frame.Draw(drawing, "Fuel in both tanks, L", "seconds", Words, Words);
        drawing.Path([new Polyline([.. moments.Select(m => frame.At(m.Seconds, m.HighLitres)), .. moments.Reverse().Select(m => frame.At(m.Seconds, m.LowLitres))], Closed: true)], new Look { Fill = Paint.Mark, Opacity = 0.15 });
        Line(drawing, moments, frame, m => m.ThereLitres, Truth);
        Line(drawing, moments, frame, m => m.EstimateLitres, Estimate);
        Line(drawing, moments, frame, m => m.NeedleLitres, Needle);
        Key(drawing, frame);
    }

    private static void Line(IDrawing drawing, IReadOnlyList<GaugeMoment> moments, PlotFrame frame, Func<GaugeMoment, double> litres, Look look) =>
        drawing.Path([new Polyline([.. moments.Select(m => frame.At(m.Seconds, litres(m)))], Closed: false)], look);

    private static void Key(IDrawing drawing, PlotFrame frame)
    {
        (Look Look, string Text, double X)[] signs = [(Truth, "what is there", 20), (Needle, "what the needle says", 220), (Estimate, "best estimate from the needle, 90 % band", 450)];
        foreach (var (look, text, x) in signs)
        {
            var y = frame.Height + 12;
            drawing.Line(new ChartPoint(x, y), new ChartPoint(x + 30, y), look);
            drawing.Text(text, new ChartPoint(x + 38, y + 5), new Lettering { Anchor = Anchor.Start });
        }
    }

    private static string Words(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
