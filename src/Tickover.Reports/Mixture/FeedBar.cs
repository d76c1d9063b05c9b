using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>What feeds at a point: each circuit's fuel as a stretch of a straw-coloured bar, with its figure.</summary>
public static class FeedBar
{
    // A circuit with less than this part of the fuel is neither drawn nor named
    private const double LeastPart = 0.005;
    private const double BarHeight = 22;
    private const double LineHeight = 22;
    private static readonly Lettering Words = new() { Size = 15, Anchor = Anchor.Start };

    /// <summary>Draws the bar.</summary>
    /// <param name="point">The point.</param>
    /// <param name="size">The size: 394 or 330 px wide.</param>
    /// <param name="idPrefix">Begins every id in the drawing.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(BarrelPoint point, PictureSize size = PictureSize.Full, string idPrefix = "feed")
    {
        var width = size == PictureSize.Full ? 394.0 : 330.0;
        var drawing = new SvgDrawing(idPrefix);
        var parts = Parts(point);
        var total = parts.Sum(p => p.Fuel);
        var left = 1.0;
        var ends = new List<double>();
        drawing.Plate(new Box(1, 1, width - 2, BarHeight), 0, new Look { Fill = Paint.Surface, Stroke = Paint.FuelEdge, Width = 1.5 });
        for (var k = 0; k < parts.Count; k++)
        {
            var (name, fuel) = parts[k];
            var length = fuel / total * (width - 2);
            drawing.Plate(
                new Box(left, 1, length, BarHeight), 0,
                new Look { Fill = k % 2 == 0 ? Paint.Fuel : Paint.Surface, Stroke = Paint.FuelEdge, Width = 1.5 });
            var text = $"{name} {(k == 0 ? Shown.WithUnit(Shown.FlowInBar(fuel), "kg/h") : Shown.FlowInBar(fuel))}";
            var start = Math.Max(1, Math.Min(left, width - 1 - Words.WidthOf(text)));
            var row = Row(ends, start, start + Words.WidthOf(text));
            drawing.Text(text, new ChartPoint(start, BarHeight + 19 + row * LineHeight), Words);
            left += length;
        }

        return drawing.ToSvg(new SvgFrame
        {
            Width = width,
            Height = BarHeight + 6 + Math.Max(1, ends.Count) * LineHeight,
            ClassName = "feed-bar",
            Label = Sentence(point),
        });
    }

    // Each name begins under its own stretch, in the first row that has room for it there
    private static int Row(List<double> ends, double start, double end)
    {
        const double apart = 10;
        var row = ends.FindIndex(e => e + apart <= start);
        if (row < 0)
        {
            ends.Add(end);
            return ends.Count - 1;
        }

        ends[row] = end;
        return row;
    }

    /// <summary>The bar in one sentence.</summary>
    /// <param name="point">The point.</param>
    /// <returns>Such as "Fuel by circuit: progression holes 0.79 kg/h, main 0.19 kg/h."</returns>
    public static string Sentence(BarrelPoint point)
    {
        var parts = Parts(point);
        return parts.Count == 0
            ? "No fuel flows here."
            : $"Fuel by circuit: {string.Join(", ", parts.Select(p => $"{p.Name} {Shown.WithUnit(Shown.FlowInBar(p.Fuel), "kg/h")}"))}.";
    }

    private static IReadOnlyList<(string Name, double Fuel)> Parts(BarrelPoint point)
    {
        var all = point.FuelKilogramsPerSecond;
        return all <= 0 || !double.IsFinite(all)
            ? []
            :
            [
                .. new (string Name, double Fuel)[]
                {
                    ("idle", point.IdleFuelKilogramsPerSecond), ("progression holes", point.ProgressionFuelKilogramsPerSecond),
                    ("main", point.MainFuelKilogramsPerSecond), ("pump jet", point.PumpFuelKilogramsPerSecond),
                }.Where(p => p.Fuel / all >= LeastPart).OrderByDescending(p => p.Fuel),
            ];
    }
}
