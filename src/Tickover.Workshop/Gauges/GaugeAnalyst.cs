using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>Works a gauge's story out.</summary>
public static class GaugeAnalyst
{
    private const double Litre = 1e-3;
    private const double Every = 0.2;
    private const double LevelMetres = 0.010;              // the trade's "within 10 mm of level"
    private const double FilledShare = 0.3;

    /// <summary>The whole analysis.</summary>
    /// <param name="story">What is described.</param>
    /// <param name="remedy">Which remedy the course is drawn with.</param>
    /// <returns>The analysis.</returns>
    public static GaugeAnalysis Of(GaugeStory story, string remedy = GaugeRemedies.AsFound)
    {
        ArgumentNullException.ThrowIfNull(story);
        var all = GaugeRemedies.Of(story.Tanks);
        var chosen = all.FirstOrDefault(r => string.Equals(r.Key, remedy, StringComparison.Ordinal)).Tanks ?? story.Tanks;
        var every = Math.Max(Every, story.Road.DurationSeconds / 3000);
        var run = chosen.Run(story.Road, story.Start, every);
        var estimator = new FuelEstimator(chosen, new EstimatorSettings { UsualBurn = Math.Max(1e-7, chosen.Draw?.BurntCubicMetresPerSecond ?? 0) });
        var remedies = all.Select(r => Judged(story, r.Key, r.Name, r.Tanks)).ToArray();
        var needle = run.Moments.Select(m => estimator.Scale.CubicMetresAt(m.Needle) / Litre).ToArray();
        return new GaugeAnalysis
        {
            Story = story,
            Course = run.Moments,
            NeedleLitres = needle,
            Estimates = estimator.Estimate([.. Readings(story.Road, run.Moments)]),
            Remedies = remedies,
            Advice = GaugeWords.Of(story, chosen, run.Moments, needle, remedies),
            CapacityLitres = estimator.Scale.CapacityCubicMetres / Litre,
            Validity = run.Validity,
        };
    }

    private static IEnumerable<GaugeReading> Readings(RoadTrace road, IReadOnlyList<SendingMoment> moments)
    {
        var from = 0;
        foreach (var m in moments)
        {
            var to = Math.Min(road.Samples.Count - 1, (int)Math.Round(m.Seconds / road.StepSeconds));
            var (ahead, left, up, count) = (0.0, 0.0, 0.0, 0);
            for (var k = from; k <= to; k++, count++)
            {
                var s = road.Samples[k];
                (ahead, left, up) = (ahead + s.AheadMetresPerSecondSquared, left + s.LeftMetresPerSecondSquared, up + s.UpMetresPerSecondSquared);
            }

            from = to;
            yield return new GaugeReading(m.Seconds, m.Needle, new RoadSample(ahead / count, left / count, up / count));
        }
    }

    private static GaugeRemedy Judged(GaugeStory story, string key, string name, TwoTanks tanks)
    {
        var run = tanks.Run(story.Road, story.Start, Math.Max(Every, story.Road.DurationSeconds / 3000));
        var scale = new NeedleScale(tanks);
        var errors = run.Moments.Select(m => (scale.CubicMetresAt(m.Needle) - m.TotalCubicMetres) / Litre).ToArray();
        return new GaugeRemedy(
            key, name, Math.Sqrt(errors.Average(e => e * e)), errors.Max(Math.Abs), Alarms(tanks, run.Moments), Minutes(tanks), run.DrySeconds);
    }

    private static int Alarms(TwoTanks tanks, IReadOnlyList<SendingMoment> moments)
    {
        var (alarms, lit) = (0, false);
        foreach (var m in moments)
        {
            if (m.Lamp && !lit && !RestingLamp(tanks, m.TotalCubicMetres))
            {
                alarms++;
            }

            lit = m.Lamp;
        }

        return alarms;
    }

    private static bool RestingLamp(TwoTanks tanks, double total)
    {
        var (left, right) = tanks.Settled(total);
        var (tank, volume) = tanks.Sender.Place.Side is TankSide.Left ? (tanks.Left, left) : (tanks.Right, right);
        return tanks.Sender.Arm.TravelAt(tank.Table.LevelOf(volume)) < tanks.Gauge.LampTravel;
    }

    // Three tenths of the capacity through the left filler into tanks that are a quarter full.
    private static double? Minutes(TwoTanks tanks)
    {
        var capacity = tanks.Left.Table.CapacityCubicMetres + tanks.Right.Table.CapacityCubicMetres;
        var (left, right) = tanks.Settled(0.25 * capacity);
        left = Math.Min(tanks.Left.Table.CapacityCubicMetres, left + FilledShare * capacity);
        return (tanks with { StepSeconds = 0.05 }).SecondsToLevel((left, right), LevelMetres, 3600) / 60;
    }
}
