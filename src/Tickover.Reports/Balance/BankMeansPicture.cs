using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>How the banks stand to each other: barrels and mean of each on one line of air, and how far apart the means may lie.</summary>
public static class BankMeansPicture
{
    private const double Width = EngineGeometry.PhoneWidth;
    private const double Left = 96;
    private const double RowHeight = 40;
    private const double Foot = 24;

    /// <summary>Draws the banks.</summary>
    /// <param name="view">What to show; every bank with at least one barrel.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(BankMeansView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view);
        return drawing.ToSvg(new SvgFrame { Width = Width, Height = view.Banks.Count * RowHeight + Foot, ClassName = "banks-picture", Label = Sentence(view) });
    }

    /// <summary>The picture in a sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "Left bank 9.0 kg/h, right bank 8.3."</returns>
    public static string Sentence(BankMeansView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return string.Join(", ", view.Banks.Select(b => string.Create(CultureInfo.InvariantCulture, $"{b.Name} {b.Values.Average():0.0} kg/h"))) + ".";
    }

    internal static void Draw(IDrawing drawing, BankMeansView view)
    {
        var all = view.Banks.Average(b => b.Values.Average());
        var half = all * view.LimitPart / 2;
        var values = view.Banks.SelectMany(b => b.Values).Append(all - half).Append(all + half).ToList();
        var edge = Math.Max((values.Max() - values.Min()) * 0.06, 0.1);
        var axis = new Scale(ScaleKind.Linear, (values.Min() - edge, values.Max() + edge), (Left, Width - 48));
        var foot = view.Banks.Count * RowHeight;
        drawing.Plate(new Box(axis.ToPlace(all - half), 2, axis.ToPlace(all + half) - axis.ToPlace(all - half), foot - 4), 3, new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 });
        foreach (var tick in Ticks.Nice(axis.Values.From, axis.Values.To, 4))
        {
            drawing.Text(tick.ToString("0.0#", CultureInfo.InvariantCulture), new ChartPoint(axis.ToPlace(tick), foot + 18), new Lettering { Paint = Paint.Ink2 });
            drawing.Line(new ChartPoint(axis.ToPlace(tick), foot - 2), new ChartPoint(axis.ToPlace(tick), foot + 4), Look.Line(Paint.MetalEdge, 1));
        }

        for (var k = 0; k < view.Banks.Count; k++)
        {
            var (name, marks) = view.Banks[k];
            var y = (k + 0.5) * RowHeight;
            var mean = axis.ToPlace(marks.Average());
            drawing.Text(name, new ChartPoint(0, y + 5), new Lettering { Size = 15, Bold = true, Anchor = Anchor.Start });
            drawing.Line(new ChartPoint(mean, y - 15), new ChartPoint(mean, y + 15), Look.Line(Paint.Ink, 3));
            SpreadStrip.Draw(drawing, marks.Select(v => (v, RingStanding.Within)), axis, y);
            drawing.Text(marks.Average().ToString("0.0", CultureInfo.InvariantCulture), new ChartPoint(Width, y + 5), new Lettering { Size = 15, Bold = true, Anchor = Anchor.End });
        }
    }
}
