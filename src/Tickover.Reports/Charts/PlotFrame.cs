using Tickover.Reports.Mixture;

namespace Tickover.Reports.Charts;

/// <summary>A plain chart of two axes with a heading: where its plot stands and how the axes are drawn.</summary>
internal sealed class PlotFrame
{
    private const double FullWidth = 772, PhoneWidth = 366;
    private const double Left = 62, Right = 16, Top = 36, Bottom = 48, PlotHeight = 230;
    private const int MostTicks = 6;

    internal PlotFrame(PictureSize size, (double From, double To) across, (double From, double To) up)
    {
        Width = size is PictureSize.Phone ? PhoneWidth : FullWidth;
        Plot = new Box(Left, Top, Width - Left - Right, PlotHeight);
        Height = Plot.Bottom + Bottom;
        Across = new Scale(ScaleKind.Linear, across, (Plot.Left, Plot.Right));
        Up = new Scale(ScaleKind.Linear, up, (Plot.Bottom, Plot.Top));
    }

    internal double Width { get; }

    internal double Height { get; }

    internal Box Plot { get; }

    internal Scale Across { get; }

    internal Scale Up { get; }

    internal ChartPoint At(double across, double up) => new(Across.ToPlace(across), Up.ToPlace(up));

    /// <summary>Draws heading, axes and hair lines.</summary>
    internal void Draw(IDrawing drawing, string heading, string under, Func<double, string> upWords, Func<double, string> acrossWords)
    {
        drawing.Text(heading, new ChartPoint(8, 20), new Lettering { Anchor = Anchor.Start, Bold = true });
        foreach (var tick in Ticks.Nice(Math.Min(Up.Values.From, Up.Values.To), Math.Max(Up.Values.From, Up.Values.To), MostTicks))
        {
            var y = Up.ToPlace(tick);
            drawing.Line(new ChartPoint(Plot.Left, y), new ChartPoint(Plot.Right, y), Look.Line(Paint.Hair, 1));
            drawing.Text(upWords(tick), new ChartPoint(Plot.Left - 6, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }

        foreach (var tick in Ticks.Nice(Across.Values.From, Across.Values.To, MostTicks))
        {
            var x = Across.ToPlace(tick);
            drawing.Line(new ChartPoint(x, Plot.Bottom), new ChartPoint(x, Plot.Bottom + 5), Look.Line(Paint.Ink2, 1));
            drawing.Text(acrossWords(tick), new ChartPoint(x, Plot.Bottom + 20), new Lettering { Paint = Paint.Ink2 });
        }

        drawing.Text(under, new ChartPoint(Plot.Right, Plot.Bottom + 38), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
    }
}
