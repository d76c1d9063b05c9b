using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Faults;

/// <summary>Where to look: the fuel system from the filler to the exhaust as a line drawing, with numbers at the places.</summary>
public static class WherePicture
{
    private const double MarkRadius = 13;
    private const double BesideEachOther = 28;
    private const double Baseline = 5;

    /// <summary>Draws it for a page.</summary>
    /// <param name="marks">Numbers at places; may be empty.</param>
    /// <param name="size">For a wide page (both halves side by side) or a phone (one below the other).</param>
    /// <param name="idPrefix">Begins every id inside.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(IReadOnlyList<FaultSpotMark> marks, PictureSize size, string idPrefix)
    {
        ArgumentNullException.ThrowIfNull(marks);
        var drawing = new SvgDrawing(idPrefix);
        var engine = size is PictureSize.Phone ? new ChartPoint(0, WhereTank.Height + WhereEngine.Headroom) : new ChartPoint(WhereTank.Width + WhereEngine.Gap, WhereEngine.Headroom);
        WhereTank.Draw(drawing);
        WhereEngine.Draw(drawing, engine);
        foreach (var spot in marks.GroupBy(m => m.Spot))
        {
            var at = WhereTank.At(spot.Key) ?? WhereEngine.At(spot.Key, engine);
            foreach (var (mark, i) in spot.OrderBy(m => m.Number).Select((m, i) => (m, i)))
            {
                Mark(drawing, new ChartPoint(at.X + BesideEachOther * i, at.Y), mark.Number);
            }
        }

        return drawing.ToSvg(new SvgFrame
        {
            Width = size is PictureSize.Phone ? WhereTank.Width : 2 * WhereTank.Width + WhereEngine.Gap,
            Height = size is PictureSize.Phone ? (2 * WhereTank.Height) + WhereEngine.Headroom : WhereTank.Height + WhereEngine.Headroom,
            ClassName = "where-picture",
            Label = marks.Count == 0
                ? "The fuel system from the filler to the exhaust"
                : $"The fuel system from the filler to the exhaust. {string.Join("; ", marks.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Number}: {m.Words}")))}",
        });
    }

    // The first place is filled, the others are outlined: the number tells them apart without colour.
    private static void Mark(SvgDrawing drawing, ChartPoint at, int number)
    {
        var first = number == 1;
        drawing.Circle(at, MarkRadius, first ? new Look { Fill = Paint.Mark, Stroke = Paint.Surface, Width = 2 } : new Look { Fill = Paint.Surface, Stroke = Paint.Mark, Width = 2.5 });
        drawing.Text(number.ToString(CultureInfo.InvariantCulture), new ChartPoint(at.X, at.Y + Baseline), new Lettering { Bold = true, Paint = first ? Paint.OnMark : Paint.Mark });
    }
}
