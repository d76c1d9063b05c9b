using Tickover.Physics.Tanks;

namespace Tickover.Physics.Gauges;

/// <summary>Looks for the resistor or the bend that makes the needle tell the fuel. docs/physics/gauges.md (12) to (14).</summary>
public static class GaugeCures
{
    private const int Points = 41;
    private const double WorthIt = 0.01;            // of the scale: less gain than this is not worth a second part
    private const double BendStep = Math.PI / 360;  // half a degree
    private const int BendSteps = 50;

    // Preferred values E24 of IEC 60063 (from memory), 1 to 910 Ω.
    private static readonly double[] Series24 = [1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1];
    private static readonly double[] Values = [.. new[] { 1.0, 10.0, 100.0 }.SelectMany(d => Series24.Select(v => v * d))];

    /// <summary>The best of each kind of cure, the smallest error first.</summary>
    /// <param name="bench">Sender and gauge.</param>
    /// <returns>At least one: leaving it as it is. Those that do no better than a simpler one are left out.</returns>
    public static IReadOnlyList<GaugeCure> Of(GaugeBench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var ohms = Volumes(bench).Select(v => Math.Max(0, bench.Sender.At(v))).ToArray();
        var cures = new List<GaugeCure?>
        {
            Cure(bench, ohms, GaugeCureKind.AsItIs),
            Best(bench, ohms, GaugeCureKind.Series, Values.Select(s => (s, (double?)null))),
            Best(bench, ohms, GaugeCureKind.Parallel, Values.Select(p => (0.0, (double?)p))),
            Best(bench, ohms, GaugeCureKind.Both, Values.SelectMany(s => Values.Select(p => (s, (double?)p)))),
            Bend(bench),
        };
        return [.. Worthwhile(cures.OfType<GaugeCure>().OrderBy(c => c.Kind)).OrderBy(c => c.RootMeanSquare)];
    }

    // A cure that does no better than a simpler one is none.
    private static IEnumerable<GaugeCure> Worthwhile(IEnumerable<GaugeCure> simplestFirst)
    {
        var best = double.PositiveInfinity;
        foreach (var cure in simplestFirst.Where(c => c.RootMeanSquare < best))
        {
            best = cure.RootMeanSquare;
            yield return cure;
        }
    }

    /// <summary>The simplest cure that is hardly worse than the best.</summary>
    /// <param name="cures">Cures.</param>
    /// <returns>The one to take.</returns>
    public static GaugeCure Advised(IReadOnlyList<GaugeCure> cures)
    {
        ArgumentNullException.ThrowIfNull(cures);
        var best = cures.Min(c => c.RootMeanSquare);
        return cures.Where(c => c.RootMeanSquare <= best + WorthIt).MinBy(c => c.Kind)!;
    }

    private static double[] Volumes(GaugeBench bench) =>
        [.. Enumerable.Range(0, Points).Select(i => bench.EmptyCubicMetres + (bench.FullCubicMetres - bench.EmptyCubicMetres) * i / (Points - 1))];

    private static GaugeCure? Best(GaugeBench bench, double[] ohms, GaugeCureKind kind, IEnumerable<(double Series, double? Parallel)> resistors)
    {
        // The sum of squares alone while searching; a cure with its scale only for the winner.
        var (series, parallel) = resistors.MinBy(r => ohms.Select((o, i) => Squared(bench.Gauge.NeedleAt(With(o, r.Series, r.Parallel)) - (double)i / (Points - 1))).Sum());
        return Cure(bench, ohms, kind, series, parallel);
    }

    private static double Squared(double x) => x * x;

    private static double With(double ohms, double series, double? parallel) =>
        series + (parallel is { } p ? ohms * p / (ohms + p) : ohms); // gauges (12)

    private static GaugeCure Cure(GaugeBench bench, double[] ohms, GaugeCureKind kind, double series = 0, double? parallel = null) => new()
    {
        Kind = kind,
        SeriesOhms = series,
        ParallelOhms = parallel,
        Scale = [.. Volumes(bench).Select((v, i) => new GaugeScalePoint(v, bench.Gauge.NeedleAt(With(ohms[i], series, parallel)), (double)i / (Points - 1)))], // gauges (13)
    };

    private static GaugeCure? Bend(GaugeBench bench)
    {
        if (bench.Arm is not { } arm || bench.Table is not { } table || OverAngle(bench, arm, table) is not { } byAngle)
        {
            return null;
        }

        var angles = Volumes(bench).Select(v => arm.AngleAt(table.DipAt(v))).ToArray();
        return Enumerable.Range(-BendSteps, 2 * BendSteps + 1)
            .Select(step => step * BendStep)
            .Select(bend => Cure(bench, [.. angles.Select(a => byAngle.At(Math.Clamp(a + bend, byAngle.First, byAngle.Last)))], GaugeCureKind.Bend) with { BendRadians = bend }) // gauges (14)
            .MinBy(c => c.RootMeanSquare);
    }

    // Resistance over the arm's angle, from what the sender does over the fuel.
    private static MonotoneCurve? OverAngle(GaugeBench bench, FloatArm arm, StrappingTable table)
    {
        var points = new List<(double X, double Y)>();
        for (var i = 0; i < Points; i++)
        {
            var volume = bench.Sender.First + (bench.Sender.Last - bench.Sender.First) * i / (Points - 1);
            var angle = Math.Clamp(arm.AngleAt(table.DipAt(volume)), arm.LowStopRadians, arm.HighStopRadians);
            if (points.Count == 0 || angle > points[^1].X)
            {
                points.Add((angle, bench.Sender.At(volume)));
            }
        }

        return MonotoneCurve.Through(points);
    }
}
