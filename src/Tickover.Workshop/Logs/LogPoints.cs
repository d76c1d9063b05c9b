using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>Makes a log into points of mixture: delay taken off, steady stretches averaged, regimes named, doubts said. docs/logs.md tells how.</summary>
public static class LogPoints
{
    private const double FewestFinite = 0.6;             // of a stretch's cells must have a λ
    private const double Saturated = 0.5;                // of them at the sensor's end: no point
    private const double PartlySaturated = 0.05;
    private const double BeforeTipIn = 1.5;               // s
    private const double AfterTipIn = 6.5;                // s

    /// <summary>Makes the points.</summary>
    /// <param name="log">The log.</param>
    /// <param name="car">The car, with what was fitted when the log was taken.</param>
    /// <param name="settings">How; null for the defaults.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The account.</returns>
    public static LogAccount Of(RoadLog log, Car car, LogPointSettings? settings = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(car);
        var view = new LogView(log, car, settings ?? new LogPointSettings());
        var delay = view.Settings.Delay ?? new DelaySearch(view.Grid, view.Air, view.Marks.Degrees, view.Usable).Find();
        cancellation.ThrowIfCancellationRequested();
        var aligned = view.Grid.Lambdas.Select(l => Aligned(view, l, delay)).ToArray();
        var finder = new StretchFinder(view);
        var tipIns = finder.TipIns();
        var steady = finder.Steady().ToArray();
        cancellation.ThrowIfCancellationRequested();
        var leftOut = new Dictionary<string, double>(StringComparer.Ordinal);
        var points = Points(view, steady, aligned, leftOut);
        TimeLeftOut(view, steady, leftOut);
        var stretches = Stretches(view, steady, tipIns);
        LogTipIn[] openings = [.. tipIns.SelectMany(t => Windows(view, t, aligned))];
        return new LogAccount
        {
            Points = PointDoubts.On(points),
            Stretches = stretches,
            Delay = delay,
            TipIns = openings,
            Pump = PumpWords.Of(view, openings),
            Trace = LogTracing.Of(view, aligned, stretches),
            Doubts = [.. log.Doubts, .. LogDoubts.Of(view, delay, points)],
            NoPoints = LogDoubts.WhyNone(view, points, leftOut),
            Dropped = [.. leftOut.Select(l => new LeftOut(l.Key, Math.Round(l.Value, 1)))],
            ClosedMark = double.IsFinite(view.Marks.Closed) ? view.Marks.Closed : null,
            WideMark = double.IsFinite(view.Marks.Wide) ? view.Marks.Wide : null,
        };
    }

    // λ shown later by the delay belongs to now.
    private static double[] Aligned(LogView view, double[] lambda, LogDelay delay)
    {
        var aligned = new double[lambda.Length];
        var later = PipeClock.Arrivals(view.Air, view.Grid.Step, delay.PipeKilograms);
        for (var i = 0; i < aligned.Length; i++)
        {
            aligned[i] = LogGrid.Between(lambda, i + later[i] + delay.FixedSeconds / view.Grid.Step);
        }

        return aligned;
    }

    private static List<MixturePoint> Points(LogView view, StretchFinder.Cells[] steady, double[][] aligned, Dictionary<string, double> leftOut)
    {
        var points = new List<MixturePoint>();
        foreach (var stretch in steady)
        {
            for (var c = 0; c < aligned.Length; c++)
            {
                if (Point(view, stretch, view.Log.Lambdas[c], aligned[c], leftOut) is { } point)
                {
                    points.Add(point);
                }
            }
        }

        return points;
    }

    private static MixturePoint? Point(LogView view, StretchFinder.Cells stretch, LambdaChannel channel, double[] aligned, Dictionary<string, double> leftOut)
    {
        var seconds = (stretch.To - stretch.From) * view.Grid.Step;
        var values = aligned[stretch.From..stretch.To].Where(double.IsFinite).ToList();
        if (values.Count < FewestFinite * (stretch.To - stretch.From))
        {
            Add(leftOut, "steady, but no figure of the λ sensor", seconds);
            return null;
        }

        var atEnd = (double)values.Count(v => v >= channel.LeanLimit || v <= channel.RichLimit) / values.Count;
        if (atEnd > Saturated)
        {
            Add(leftOut, "steady, but the λ sensor was at its end", seconds);
            return null;
        }

        var mean = LambdaMean.Of(values, view.Grid.Step);
        var moment = view.Mean(stretch.From, stretch.To);
        return new MixturePoint
        {
            Bank = channel.Bank,
            Regime = stretch.Regime,
            SpeedRpm = moment.SpeedRpm,
            ThrottleDegrees = double.IsFinite(moment.Degrees) ? moment.Degrees : null,
            ManifoldPascals = double.IsFinite(moment.ManifoldPascals) ? moment.ManifoldPascals : null,
            Lambda = mean.Mean,
            LambdaSigma = Math.Sqrt(mean.Error * mean.Error + view.Settings.SensorSigma * view.Settings.SensorSigma),
            Count = mean.Count,
            StartSeconds = stretch.From * view.Grid.Step,
            Seconds = seconds,
            Doubts = PointDoubts.Of(stretch.Regime, mean, atEnd > PartlySaturated, view, stretch.From, stretch.To),
        };
    }

    private static void TimeLeftOut(LogView view, StretchFinder.Cells[] steady, Dictionary<string, double> leftOut)
    {
        var used = new bool[view.Grid.Count];
        foreach (var stretch in steady)
        {
            Array.Fill(used, true, stretch.From, stretch.To - stretch.From);
        }

        for (var i = 0; i < used.Length; i++)
        {
            if (!used[i])
            {
                Add(leftOut, !view.Runs(i) ? "engine not running, or a gap" : view.IsCold(i) ? "engine cold" : "not steady, or just after a change", view.Grid.Step);
            }
        }
    }

    private static void Add(Dictionary<string, double> leftOut, string why, double seconds) => leftOut[why] = leftOut.GetValueOrDefault(why) + seconds;

    private static List<LogStretch> Stretches(LogView view, StretchFinder.Cells[] steady, List<int> tipIns)
    {
        var step = view.Grid.Step;
        return
        [
            .. steady.Select(s => new LogStretch(s.From * step, s.To * step, s.Regime))
                .Concat(tipIns.Select(t => new LogStretch(t * step, t * step + 2.5, Regime.TipIn)))
                .OrderBy(s => s.StartSeconds),
        ];
    }

    private static IEnumerable<LogTipIn> Windows(LogView view, int start, double[][] aligned)
    {
        var step = view.Grid.Step;
        var from = Math.Max(0, start - (int)(BeforeTipIn / step));
        var to = Math.Min(view.Grid.Count, start + (int)(AfterTipIn / step));
        for (var c = 0; c < aligned.Length; c++)
        {
            var lambda = aligned[c];
            var rows = Enumerable.Range(from, to - from).Where(i => double.IsFinite(lambda[i]) && view.Runs(i)).ToArray();
            yield return new LogTipIn(start * step, view.Log.Lambdas[c].Bank, new TipInTrace
            {
                Seconds = [.. rows.Select(i => i * step)],
                ThrottleDegrees = [.. rows.Select(i => view.Marks.Degrees![i])],
                SpeedRpm = [.. rows.Select(i => view.Grid.SpeedRpm[i])],
                Lambda = [.. rows.Select(i => lambda[i])],
                DelaySeconds = 0,
            });
        }
    }
}
