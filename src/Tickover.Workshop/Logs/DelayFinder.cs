namespace Tickover.Workshop.Logs;

/// <summary>Finds the delay of λ by laying its changes over those of the throttle: cross-correlation, apart for small and large flow.</summary>
internal static class DelayFinder
{
    private const double Step = 0.05;                     // s
    private const double Most = 3;                        // s; more is no exhaust of a car
    private const double Believable = 0.25;               // correlation
    private const double SplitFlow = 0.35;                // of the largest: between idle with light load, and the rest
    private const int Fewest = 200;                       // samples of the grid in a group

    internal static LogDelay Of(LogTrack track, LambdaChannel channel)
    {
        if (track.Load is null || track.Log.Count < 2)
        {
            return LogDelay.Usual;
        }

        var end = track.Log.Seconds[^1];
        var count = (int)Math.Min(end / Step, 200_000);
        if (count < Fewest)
        {
            return LogDelay.Usual;
        }

        var lambda = Changes(Even([.. channel.Lambda.Select(l => l > 0 ? Math.Log(l) : double.NaN)], track, count));
        var load = Changes(Even(track.Load, track, count));
        var flow = Even(track.Flow, track, count);
        var (slow, fast) = (Lag(lambda, load, flow, f => f < SplitFlow), Lag(lambda, load, flow, f => f >= SplitFlow));
        return (slow.Likeness >= Believable, fast.Likeness >= Believable) switch
        {
            (true, true) when slow.Seconds > fast.Seconds => Both(slow, fast),
            (_, true) => new LogDelay(Math.Max(0.05, fast.Seconds - 0.1), 0.1 * fast.Flow / 0.1, true, fast.Likeness),
            (true, false) => new LogDelay(Math.Max(0.05, slow.Seconds * 0.5), slow.Seconds * 0.5 * slow.Flow / 0.1, true, slow.Likeness),
            _ => LogDelay.Usual,
        };
    }

    // Two delays at two flows give the part that goes with one over the flow and the part that does not.
    private static LogDelay Both((double Seconds, double Likeness, double Flow) slow, (double Seconds, double Likeness, double Flow) fast)
    {
        var travelled = (slow.Seconds - fast.Seconds) / (1 / slow.Flow - 1 / fast.Flow);
        return new LogDelay(Math.Max(0.05, fast.Seconds - travelled / fast.Flow), travelled / 0.1, true, Math.Min(slow.Likeness, fast.Likeness));
    }

    private static (double Seconds, double Likeness, double Flow) Lag(double[] lambda, double[] load, double[] flow, Func<double, bool> belongs)
    {
        var rows = Enumerable.Range(0, load.Length).Where(i => belongs(flow[i]) && double.IsFinite(load[i])).ToArray();
        if (rows.Length < Fewest)
        {
            return (0, 0, 1);
        }

        var best = (Lag: 0, Likeness: 0.0);
        for (var lag = 0; lag <= (int)(Most / Step); lag++)
        {
            var (n, xy, xx, yy) = (0, 0.0, 0.0, 0.0);
            foreach (var i in rows)
            {
                if (i + lag < lambda.Length && double.IsFinite(lambda[i + lag]))
                {
                    (n, xy, xx, yy) = (n + 1, xy + load[i] * lambda[i + lag], xx + load[i] * load[i], yy + lambda[i + lag] * lambda[i + lag]);
                }
            }

            var likeness = n >= Fewest && xx > 0 && yy > 0 ? Math.Abs(xy) / Math.Sqrt(xx * yy) : 0;
            best = likeness > best.Likeness ? (lag, likeness) : best;
        }

        return (best.Lag * Step, best.Likeness, Math.Max(0.03, rows.Average(i => flow[i])));
    }

    // Values on an even clock; NaN stays where there is none.
    private static double[] Even(double[] values, LogTrack track, int count)
    {
        var even = new double[count];
        var at = 0;
        for (var i = 0; i < count; i++)
        {
            var time = i * Step;
            while (at + 1 < track.Log.Count && track.Log.Seconds[at + 1] <= time)
            {
                at++;
            }

            even[i] = values[at];
        }

        return even;
    }

    // Change over a quarter of a second: noise of single samples cancels, a foot's movement stays.
    private static double[] Changes(double[] values)
    {
        const int Over = 5;
        var changes = new double[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            changes[i] = i >= Over ? values[i] - values[i - Over] : double.NaN;
        }

        return changes;
    }
}
