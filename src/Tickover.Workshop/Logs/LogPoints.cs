using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>Makes points of a log: delay taken off, steady stretches averaged by bank, what speaks against them said. docs/logs.md.</summary>
public static class LogPoints
{
    private const int FewestSamples = 5;
    private const double PullSeconds = 0.5;               // of a full-load pull that make a point
    private const double MostSaturated = 0.2;             // of the samples of a stretch
    private const double Restless = 0.06;                 // standard deviation of ln λ in a steady stretch: it misses beats
    private const double LeanIdle = 1.08;                 // an idle that lean does not run evenly
    private const double BanksApart = 0.06;               // ln λ

    /// <summary>Makes the points.</summary>
    /// <param name="log">The log.</param>
    /// <param name="car">The car as it was.</param>
    /// <param name="settings">How; null for the defaults.</param>
    /// <returns>The points with how they came about.</returns>
    public static LogAccount Of(RoadLog log, Car car, LogSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(car);
        var how = settings ?? new LogSettings();
        var track = new LogTrack(log, car, how);
        var cut = new LogRegimes(track).Cut().ToList();
        var aside = new Dictionary<string, int>(StringComparer.Ordinal);
        var points = new List<MixturePoint>();
        var delays = log.Lambdas.Select(c => DelayFinder.Of(track, c)).ToList();
        foreach (var (from, to, regime, steady) in cut)
        {
            if (!steady)
            {
                Aside(aside, regime is Regime.TipIn ? "fast opening" : regime is Regime.Overrun ? "overrun" : "speed or throttle moving", to - from + 1);
                continue;
            }

            for (var c = 0; c < log.Lambdas.Count; c++)
            {
                if (Point(track, log.Lambdas[c], delays[c], (from, to, regime), how, aside) is { } point)
                {
                    points.Add(point);
                }
            }
        }

        return new LogAccount
        {
            Points = points,
            Stretches = [.. cut.Select(s => new LogStretch(log.Seconds[s.From], log.Seconds[s.To], s.Regime, s.IsSteady))],
            Delay = delays.Count > 0 ? delays[0] : LogDelay.Usual,
            Throttle = track.Marks,
            Doubts = Doubts(log, car, track, points, delays),
            LeftAside = [.. aside.Select(a => (a.Key, a.Value))],
        };
    }

    private static MixturePoint? Point(
        LogTrack track, LambdaChannel channel, LogDelay delay, (int From, int To, Regime Regime) stretch, LogSettings how, Dictionary<string, int> aside)
    {
        var log = track.Log;
        var pull = stretch.Regime == Regime.FullLoad && Math.Abs(log.SpeedRpm[stretch.To] - log.SpeedRpm[stretch.From]) > 200;
        var begin = log.Seconds[stretch.From] + (pull ? 0 : how.SettlingSeconds);
        var seconds = log.Seconds[stretch.To] - begin;
        var all = stretch.To - stretch.From + 1;
        if (seconds < (pull ? PullSeconds : how.ShortestSeconds - how.SettlingSeconds))
        {
            return Left(aside, "steady for too short a time", all);
        }

        if (IsCold(log, stretch.From, how))
        {
            return Left(aside, "engine cold", all);
        }

        var (values, saturated) = Values(track, channel, delay, (begin, stretch.From, stretch.To));
        if (values.Count < FewestSamples || saturated > MostSaturated * (values.Count + saturated))
        {
            return Left(aside, saturated > 0 ? "sensor at the end of its range" : "no λ", all);
        }

        var mean = values.Average();
        var deviation = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / Math.Max(1, values.Count - 1));
        var error = deviation / Math.Sqrt(Math.Max(1, Independent(values, mean)));
        var lambda = Math.Exp(mean);
        return new MixturePoint
        {
            Bank = channel.Bank,
            Regime = stretch.Regime,
            SpeedRpm = Mean(log.SpeedRpm, stretch.From, stretch.To)!.Value,
            ThrottleDegrees = Opening(track, stretch.From, stretch.To),
            ManifoldPascals = log.ManifoldPascals is { } map ? Mean(map, stretch.From, stretch.To) : null,
            Lambda = lambda,
            LambdaSigma = lambda * Math.Sqrt(error * error + how.SensorNoise * how.SensorNoise * (stretch.Regime == Regime.Idle ? 2.5 : 1)),
            Count = values.Count,
            StartSeconds = begin,
            Seconds = seconds,
            Doubts = PointDoubts(stretch.Regime, lambda, deviation),
        };
    }

    private static bool IsCold(RoadLog log, int sample, LogSettings how) => log.CoolantKelvins is { } coolant && coolant[sample] < how.ColdKelvins;

    private static double? Opening(LogTrack track, int from, int to) => track.Degrees is { } degrees
        ? Math.Max(0, degrees[from..(to + 1)].Where(double.IsFinite).DefaultIfEmpty(0).Average())
        : null;

    // λ that left the engine while the stretch lasted: read later by the delay at that flow.
    private static (List<double> Values, int Saturated) Values(LogTrack track, LambdaChannel channel, LogDelay delay, (double Begin, int From, int To) stretch)
    {
        var (values, saturated, log) = (new List<double>(), 0, track.Log);
        var at = stretch.From;
        for (var i = stretch.From; i <= stretch.To; i++)
        {
            if (log.Seconds[i] < stretch.Begin)
            {
                continue;
            }

            var seen = log.Seconds[i] + delay.At(track.Flow[i]);
            while (at + 1 < log.Count && log.Seconds[at] < seen)
            {
                at++;
            }

            var lambda = channel.Lambda[at];
            if (lambda >= channel.LeanLimit || lambda <= channel.RichLimit)
            {
                saturated++;
            }
            else if (float.IsFinite(lambda) && lambda > 0.4f)
            {
                values.Add(Math.Log(lambda));
            }
        }

        return (values, saturated);
    }

    // Readings that follow each other closely are not as many proofs: by the correlation of neighbours.
    private static double Independent(List<double> values, double mean)
    {
        var (own, next) = (0.0, 0.0);
        for (var i = 0; i < values.Count; i++)
        {
            own += (values[i] - mean) * (values[i] - mean);
            next += i > 0 ? (values[i] - mean) * (values[i - 1] - mean) : 0;
        }

        var r = own > 0 ? Math.Clamp(next / own, 0, 0.98) : 0;
        return values.Count * (1 - r) / (1 + r);
    }

    private static List<string> PointDoubts(Regime regime, double lambda, double deviation)
    {
        var doubts = new List<string>();
        if (deviation > Restless)
        {
            doubts.Add("λ jumps about while speed and throttle stand still: a missed beat shows as lean");
        }

        if (regime == Regime.Idle && lambda > LeanIdle)
        {
            doubts.Add("an idle this lean would not run evenly: look for an exhaust leak or a missing cylinder first");
        }

        return doubts;
    }

    private static List<string> Doubts(RoadLog log, Car car, LogTrack track, List<MixturePoint> points, List<LogDelay> delays)
    {
        var c = CultureInfo.InvariantCulture;
        var doubts = new List<string>(log.Doubts);
        var banks = car.Banks.Max();
        if (banks > 1 && log.Lambdas.Count == 1)
        {
            doubts.Add(log.Lambdas[0].Bank is { } bank
                ? string.Create(c, $"Only bank {bank} was measured; the other may differ. Swap the sensor over for one run.")
                : "One probe for both banks: a lean and a rich bank look right together. Measure each bank once.");
        }

        if (delays.Count > 0 && !delays[0].IsFound)
        {
            doubts.Add("The sensor's delay does not show in the log; what is usual was taken. Three quick snaps of the throttle would show it.");
        }

        if (track.Marks is { } marks && !double.IsFinite(marks.WideOpen - marks.Shut))
        {
            doubts.Add("The throttle channel says nothing.");
        }

        var apart = points.Where(p => p.Bank is not null).GroupBy(p => (p.StartSeconds, p.Regime)).Where(g => g.Count() > 1).Select(g => Math.Log(g.Max(p => p.Lambda) / g.Min(p => p.Lambda))).ToList();
        if (apart.Count > 2 && apart.Average() > BanksApart)
        {
            doubts.Add(string.Create(c, $"The banks differ by {100 * apart.Average():0} % everywhere: swap the sensors side to side before any jet."));
        }

        return doubts;
    }

    private static double? Mean(IReadOnlyList<float> values, int from, int to)
    {
        var (sum, count) = (0.0, 0);
        for (var i = from; i <= to; i++)
        {
            if (float.IsFinite(values[i]))
            {
                (sum, count) = (sum + values[i], count + 1);
            }
        }

        return count > 0 ? sum / count : null;
    }

    private static MixturePoint? Left(Dictionary<string, int> aside, string reason, int samples)
    {
        Aside(aside, reason, samples);
        return null;
    }

    private static void Aside(Dictionary<string, int> aside, string reason, int samples) => aside[reason] = aside.GetValueOrDefault(reason) + samples;
}
