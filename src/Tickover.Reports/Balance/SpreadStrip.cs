using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>Marks on a level line of air: round within the limit, open where it cannot be told, a diamond outside.</summary>
internal static class SpreadStrip
{
    private const double Radius = 5;
    private static readonly double[] Offsets = [0, -7, 7, -12, 12];

    internal static void Draw(IDrawing drawing, IEnumerable<(double Value, RingStanding Standing)> marks, Scale axis, double y)
    {
        List<(double Place, int Level)> set = [];
        foreach (var (value, standing) in marks.OrderBy(m => m.Value))
        {
            var place = axis.ToPlace(value);
            var taken = set.Where(s => Math.Abs(s.Place - place) < 1.8 * Radius).Select(s => s.Level).ToHashSet();
            var level = Enumerable.Range(0, Offsets.Length).FirstOrDefault(l => !taken.Contains(l), Offsets.Length - 1);
            set.Add((place, level));
            Mark(drawing, new ChartPoint(place, y + Offsets[level]), standing);
        }
    }

    private static void Mark(IDrawing drawing, ChartPoint at, RingStanding standing)
    {
        if (standing is RingStanding.Low or RingStanding.High)
        {
            RingLabels.Marker(drawing, at, Radius + 2, Paint.Theme("out"));
            return;
        }

        drawing.Circle(at, Radius, standing == RingStanding.CannotTell
            ? new Look { Fill = Paint.Surface, Stroke = Paint.AirEdge, Width = 2 }
            : new Look { Fill = Paint.AirEdge, Stroke = Paint.Surface, Width = 1 });
    }
}
