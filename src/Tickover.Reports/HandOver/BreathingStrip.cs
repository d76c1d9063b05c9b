using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.HandOver;

/// <summary>How evenly an engine breathes: one mark a barrel on a line of air, before and after. Round is inside the limit, a diamond outside.</summary>
public static class BreathingStrip
{
    /// <summary>Width, drawing units.</summary>
    public const double Width = 400;

    private const double RowHeight = 40;
    private const double AxisHeight = 24;
    private const double Left = 96;
    private const double Radius = 5.5;
    private const double BandHeight = 26;
    private static readonly Look Within = new() { Fill = Paint.Theme("within"), Stroke = Paint.Surface, Width = 1.5 };
    private static readonly Look Outside = new() { Fill = Paint.Theme("out"), Stroke = Paint.Surface, Width = 1.5 };

    /// <summary>Draws the strip as SVG.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(BreathingView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view);
        return drawing.ToSvg(new SvgFrame { Width = Width, Height = Height(view), ClassName = "breathing-picture", Label = Sentence(view) });
    }

    /// <summary>Height, drawing units.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>The height.</returns>
    public static double Height(BreathingView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Rows.Count * RowHeight + AxisHeight;
    }

    /// <summary>The picture in a sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "As found: 6 barrels from 2.8 to 5.0 kg/h, 5 outside the limit."</returns>
    public static string Sentence(BreathingView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return string.Join(' ', view.Rows.Select(r => string.Create(
            CultureInfo.InvariantCulture,
            $"{r.Label}: {r.Marks.Count} barrels from {r.Marks.Min(m => m.Air):0.0} to {r.Marks.Max(m => m.Air):0.0} {view.Unit}, {Count(r)} outside the limit.")));
    }

    internal static void Draw(IDrawing drawing, BreathingView view)
    {
        var axis = Axis(view);
        for (var i = 0; i < view.Rows.Count; i++)
        {
            Row(drawing, view.Rows[i], axis, (i + 0.5) * RowHeight);
        }

        var foot = view.Rows.Count * RowHeight;
        foreach (var tick in Ticks.Nice(axis.Values.From, axis.Values.To, 6))
        {
            var place = axis.ToPlace(tick);
            drawing.Line(new ChartPoint(place, foot - 1), new ChartPoint(place, foot + 4), Look.Line(Paint.MetalEdge, 1));
            drawing.Text(tick.ToString("0.##", CultureInfo.InvariantCulture), new ChartPoint(place, foot + 18), new Lettering { Paint = Paint.Ink2 });
        }
    }

    private static string Count(BreathingRow row) => row.Marks.Count(m => m.Outside) is var n && n == 0 ? "none" : n.ToString(CultureInfo.InvariantCulture);

    private static Scale Axis(BreathingView view)
    {
        var places = view.Rows.SelectMany(r => r.Marks.Select(m => m.Air).Append(r.Mean - (r.Allowed ?? 0)).Append(r.Mean + (r.Allowed ?? 0))).ToList();
        var (low, high) = (places.Min(), places.Max());
        var edge = Math.Max((high - low) * 0.06, 0.05);
        return new Scale(ScaleKind.Linear, (low - edge, high + edge), (Left, Width - 8));
    }

    private static void Row(IDrawing drawing, BreathingRow row, Scale axis, double y)
    {
        drawing.Text(row.Label, new ChartPoint(0, y + 5), new Lettering { Size = 15, Bold = true, Anchor = Anchor.Start });
        if (row.Allowed is { } allowed)
        {
            var (from, to) = (axis.ToPlace(row.Mean - allowed), axis.ToPlace(row.Mean + allowed));
            drawing.Plate(new Box(from, y - BandHeight / 2, to - from, BandHeight), 3, new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 });
        }

        var mean = axis.ToPlace(row.Mean);
        drawing.Line(new ChartPoint(mean, y - BandHeight / 2), new ChartPoint(mean, y + BandHeight / 2), Look.Line(Paint.Ink, 2));
        foreach (var (place, offset, outside) in Stacked(row, axis))
        {
            Mark(drawing, new ChartPoint(place, y + offset), outside);
        }
    }

    // Marks that would hide each other stand above and below the line in turn
    private static IEnumerable<(double Place, double Offset, bool Outside)> Stacked(BreathingRow row, Scale axis)
    {
        double[] offsets = [0, -8, 8, -14, 14];
        List<(double Place, int Level)> set = [];
        foreach (var (air, outside) in row.Marks.OrderBy(m => m.Air))
        {
            var place = axis.ToPlace(air);
            var taken = set.Where(s => Math.Abs(s.Place - place) < 1.7 * Radius).Select(s => s.Level).ToHashSet();
            var level = Enumerable.Range(0, offsets.Length).FirstOrDefault(l => !taken.Contains(l), offsets.Length - 1);
            set.Add((place, level));
            yield return (place, offsets[level], outside);
        }
    }

    private static void Mark(IDrawing drawing, ChartPoint at, bool outside)
    {
        if (!outside)
        {
            drawing.Circle(at, Radius, Within);
            return;
        }

        const double half = 7;
        drawing.Path([new Polyline([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], Closed: true)], Outside);
    }
}
