using Tickover.Physics.Tanks;

namespace Tickover.Physics.Gauges;

/// <summary>Resistance over fuel as a sender has it: readings made monotone with the least change, and a smooth curve through them.</summary>
/// <remarks>Pool of neighbours that turn back, after Ayer and others, Ann. Math. Stat. 26 (1955) 641 (from memory). docs/physics/gauges.md (7).</remarks>
public sealed record SenderCurve
{
    /// <summary>The curve, Ω over m³.</summary>
    public required MonotoneCurve Curve { get; init; }

    /// <summary>Whether the resistance falls as fuel goes in.</summary>
    public required bool Falls { get; init; }

    /// <summary>Root mean square of reading less curve, Ω: jumps and dirty tracks show here.</summary>
    public required double ScatterOhms { get; init; }

    /// <summary>Volume of the reading furthest from the curve, m³.</summary>
    public required double WorstCubicMetres { get; init; }

    /// <summary>How far that one is off, Ω.</summary>
    public required double WorstOhms { get; init; }

    /// <summary>Fits the readings that have a resistance.</summary>
    /// <param name="readings">The readings, in any order; those without ohms or with an open circuit are left out.</param>
    /// <returns>The curve; null with fewer than two fillings.</returns>
    public static SenderCurve? Of(IEnumerable<SenderReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var points = readings.Where(r => r.Ohms is { } ohms && double.IsFinite(ohms))
            .GroupBy(r => r.VolumeCubicMetres).OrderBy(g => g.Key)
            .Select(g => (X: g.Key, Y: g.Average(r => r.Ohms!.Value), Weight: g.Count())).ToArray();
        if (points.Length < 2)
        {
            return null;
        }

        var (rising, falling) = (Pooled(points, 1), Pooled(points, -1));
        double Scatter(double[] y) => Math.Sqrt(points.Select((p, i) => p.Weight * (p.Y - y[i]) * (p.Y - y[i])).Sum() / points.Sum(p => p.Weight));
        var falls = Scatter(falling) < Scatter(rising);
        var fitted = falls ? falling : rising;
        var worst = Enumerable.Range(0, points.Length).MaxBy(i => Math.Abs(points[i].Y - fitted[i]));
        return new SenderCurve
        {
            Curve = MonotoneCurve.Through(points.Select((p, i) => (p.X, fitted[i])))!,
            Falls = falls,
            ScatterOhms = Scatter(fitted),
            WorstCubicMetres = points[worst].X,
            WorstOhms = points[worst].Y - fitted[worst],
        };
    }

    // Neighbours out of order are replaced by their mean, again and again.
    private static double[] Pooled((double X, double Y, int Weight)[] points, int sign)
    {
        var pools = new List<(double Sum, int Weight, int Count)>();
        foreach (var (_, y, weight) in points)
        {
            pools.Add((sign * y * weight, weight, 1)); // gauges (7)
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Weight > pools[^1].Sum / pools[^1].Weight)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Weight + pools[^1].Weight, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }

        return [.. pools.SelectMany(p => Enumerable.Repeat(sign * p.Sum / p.Weight, p.Count))];
    }
}
