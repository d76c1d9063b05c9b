using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Balance;

/// <summary>The history: a row a round, what was moved before it, how the barrels lie about the mean, the limit, the spread.</summary>
public static class RoundsPicture
{
    private const double Foot = 26;
    private const double SpreadRoom = 56;
    private const double NumberRoom = 24;

    /// <summary>Draws the history.</summary>
    /// <param name="view">What to show; at least one round with a figure.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(RoundsView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view);
        return drawing.ToSvg(new SvgFrame { Width = Width(view), Height = Height(view), ClassName = "rounds-picture", Label = Sentence(view) });
    }

    /// <summary>The history in a sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "5 rounds; spread 2.2 kg/h at first, 0.7 last."</returns>
    public static string Sentence(RoundsView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Rows.Count == 0
            ? "No round yet."
            : string.Create(CultureInfo.InvariantCulture, $"{view.Rows.Count} rounds; spread {view.Rows[0].Spread:0.0} {view.Unit} at first, {view.Rows[^1].Spread:0.0} last.");
    }

    internal static double Width(RoundsView view) => view.Size == PictureSize.Full ? EngineGeometry.FullWidth : EngineGeometry.PhoneWidth;

    internal static double Height(RoundsView view) => Top + view.Rows.Count * RowHeight(view) + 4;

    private static double Top => Foot;

    private static double RowHeight(RoundsView view) => view.Size == PictureSize.Full ? 27 : 46;

    internal static void Draw(IDrawing drawing, RoundsView view)
    {
        var isFull = view.Size == PictureSize.Full;
        var axis = Axis(view, isFull ? 330 : 10);
        foreach (var tick in Ticks.Nice(axis.Values.From, axis.Values.To, 5))
        {
            var x = axis.ToPlace(tick);
            drawing.Line(new ChartPoint(x, Top), new ChartPoint(x, Height(view) - 2), Look.Line(Paint.Hair, 1));
            drawing.Text(tick.ToString("0.0#", CultureInfo.InvariantCulture), new ChartPoint(x, 16), new Lettering { Paint = Paint.Ink2 });
        }

        drawing.Text("spread", new ChartPoint(Width(view), 16), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        for (var k = 0; k < view.Rows.Count; k++)
        {
            Row(drawing, view, view.Rows[k], axis, Top + k * RowHeight(view));
        }
    }

    private static Scale Axis(RoundsView view, double left)
    {
        var values = view.Rows.SelectMany(r => r.Marks.Select(m => m.Value).Append(r.Mean * (1 - (r.LimitPart ?? 0))).Append(r.Mean * (1 + (r.LimitPart ?? 0)))).DefaultIfEmpty(0).ToList();
        var (low, high) = (values.Min(), values.Max());
        var edge = Math.Max((high - low) * 0.05, 0.1);
        return new Scale(ScaleKind.Linear, (low - edge, high + edge), (left, Width(view) - SpreadRoom - 8));
    }

    private static void Row(IDrawing drawing, RoundsView view, RoundRow row, Scale axis, double top)
    {
        var isLast = ReferenceEquals(row, view.Rows[^1]);
        var isFull = view.Size == PictureSize.Full;
        var line = top + (isFull ? RowHeight(view) / 2 : 32);
        var words = new Lettering { Size = 15, Anchor = Anchor.Start, Bold = isLast };
        var baseline = isFull ? line + 5 : top + 15;
        drawing.Text(row.Number.ToString(CultureInfo.InvariantCulture), new ChartPoint(0, baseline), words with { Bold = true });
        drawing.Text(Fitting(row.Before, words, isFull ? 330 - NumberRoom - 12 : Width(view) - NumberRoom - 8), new ChartPoint(NumberRoom, baseline), words);
        if (row.LimitPart is { } limit)
        {
            var (from, to) = (axis.ToPlace(row.Mean * (1 - limit)), axis.ToPlace(row.Mean * (1 + limit)));
            drawing.Plate(new Box(from, line - 11, to - from, 22), 3, new Look { Fill = row.IsVoid ? Paint.Hatched(Hatch.NoAnswer) : Paint.Band, Stroke = Paint.MetalEdge, Width = 1, Dashes = row.IsVoid ? (4, 4) : null });
        }

        if (row.Marks.Count > 0)
        {
            var mean = axis.ToPlace(row.Mean);
            drawing.Line(new ChartPoint(mean, line - 11), new ChartPoint(mean, line + 11), Look.Line(Paint.Ink, 2));
        }

        SpreadStrip.Draw(drawing, row.Marks, axis, line);
        drawing.Text(row.IsVoid ? "void" : row.Spread.ToString("0.0", CultureInfo.InvariantCulture), new ChartPoint(Width(view), line + 5), new Lettering { Size = 15, Bold = !row.IsVoid, Anchor = Anchor.End });
    }

    // What does not fit is told in full by the list of rounds below the picture.
    private static string Fitting(string text, Lettering look, double room)
    {
        var fits = (int)(room / look.WidthOf("n"));
        return text.Length <= fits ? text : string.Concat(text.AsSpan(0, Math.Max(fits - 1, 1)).TrimEnd(), "…");
    }
}
