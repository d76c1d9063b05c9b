using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>What stands below or beside a ring: percent of the mean, and "low" or "high" with a diamond.</summary>
internal static class RingLabels
{
    internal const double LineHeight = 17;
    private const double Diamond = 6;

    /// <summary>Writes it.</summary>
    internal static void Draw(IDrawing drawing, EngineGeometry at, RingView ring, ChartPoint centre)
    {
        var (percent, word) = RingDrawing.Words(ring);
        var isOut = ring.Standing is RingStanding.Low or RingStanding.High && ring.Figure.Length > 0;
        var isNext = ring.IsNext && ring.Figure.Length == 0;
        var look = new Lettering { Bold = isOut || isNext, Paint = isOut ? Paint.Theme("out") : isNext ? Paint.Mark : Paint.Ink };
        if (at.LabelsBeside)
        {
            var place = new ChartPoint(centre.X + at.RingReach + 6, centre.Y - 2);
            Lines(drawing, [percent, word], place, look with { Anchor = Anchor.Start }, isOut);
            return;
        }

        var below = new ChartPoint(centre.X, centre.Y + at.RingReach + 18);
        Lines(drawing, at.LabelsInOneLine ? [$"{percent} {word}".Trim()] : [percent, word], below, look, isOut);
    }

    private static void Lines(IDrawing drawing, IReadOnlyList<string> lines, ChartPoint at, Lettering look, bool isOut)
    {
        for (var k = 0; k < lines.Count; k++)
        {
            var place = at with { Y = at.Y + k * LineHeight };
            var marked = isOut && k == lines.Count - 1;
            if (marked)
            {
                var width = look.WidthOf(lines[k]);
                var left = look.Anchor == Anchor.Start ? place.X : place.X - width / 2 - 1;
                Marker(drawing, new ChartPoint(left + (look.Anchor == Anchor.Start ? Diamond : -1), place.Y - 5), Diamond, look.Paint);
                place = place with { X = place.X + (look.Anchor == Anchor.Start ? 2 * Diamond + 3 : Diamond) };
            }

            if (lines[k].Length > 0)
            {
                drawing.Text(lines[k], place, look);
            }
        }
    }

    /// <summary>A diamond: outside the limit.</summary>
    internal static void Marker(IDrawing drawing, ChartPoint at, double half, Paint paint) => drawing.Path(
        [new Polyline([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], Closed: true)],
        Look.Filled(paint));
}
