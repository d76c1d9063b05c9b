using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>A log's samples as the making of points sees them: opening in degrees, flow, rates of change.</summary>
internal sealed class LogTrack
{
    private const double LowMark = 0.01;                  // part of the samples below the mark of the shut throttle
    private const double HighMark = 0.995;
    private const double Window = 0.5;                    // s either way over which rates are taken

    internal LogTrack(RoadLog log, Car car, LogSettings settings)
    {
        Log = log;
        WideDegrees = 90 - car.Barrels.Max(b => b.Figures.Si("barrel.closedAngle")) * 180 / Math.PI;
        if (log.Throttle is { } throttle)
        {
            var marks = log.ThrottleScale == ThrottleScale.Degrees ? (0, WideDegrees) : (settings.Shut ?? Quantile(throttle, LowMark), settings.WideOpen ?? Quantile(throttle, HighMark));
            Marks = log.ThrottleScale == ThrottleScale.Degrees ? null : marks;
            var span = Math.Max(1e-9, marks.Item2 - marks.Item1);
            Degrees = [.. throttle.Select(t => Math.Clamp((t - marks.Item1) / span, -0.02, 1.02) * WideDegrees)];
        }

        Load = Degrees ?? (log.ManifoldPascals is { } map ? [.. map.Select(p => (double)p)] : null);
        RpmRate = Rates([.. log.SpeedRpm.Select(v => (double)v)]);
        LoadRate = Load is null ? new double[log.Count] : Rates(Load);
        Flow = Flows();
    }

    internal RoadLog Log { get; }

    /// <summary>Opening wide open, degrees.</summary>
    internal double WideDegrees { get; }

    /// <summary>Shut and wide open in the channel's own figures.</summary>
    internal (double Shut, double WideOpen)? Marks { get; }

    /// <summary>Opening, degrees; null where the log has none.</summary>
    internal double[]? Degrees { get; }

    /// <summary>Opening in degrees or else pressure in Pa: what the foot does.</summary>
    internal double[]? Load { get; }

    /// <summary>Change of speed, rpm/s.</summary>
    internal double[] RpmRate { get; }

    /// <summary>Change of the load, its unit/s.</summary>
    internal double[] LoadRate { get; }

    /// <summary>Flow of gas as a part of the largest, 0 to 1.</summary>
    internal double[] Flow { get; }

    internal static double Quantile(IReadOnlyList<float> values, double part)
    {
        var sorted = values.Where(float.IsFinite).Order().ToArray();
        return sorted.Length == 0 ? 0 : sorted[(int)Math.Clamp(part * (sorted.Length - 1), 0, sorted.Length - 1)];
    }

    private double[] Flows()
    {
        var flow = new double[Log.Count];
        for (var i = 0; i < flow.Length; i++)
        {
            var filling = Log.ManifoldPascals is { } map && float.IsFinite(map[i]) ? map[i] / 1e5 : Degrees is { } d && double.IsFinite(d[i]) ? 0.3 + 0.7 * Math.Sqrt(Math.Max(0, d[i]) / WideDegrees) : 0.6;
            flow[i] = float.IsFinite(Log.SpeedRpm[i]) ? Math.Max(0, Log.SpeedRpm[i]) * filling : 0;
        }

        var most = flow.Length == 0 ? 1 : Math.Max(1, flow.Max());
        return Array.ConvertAll(flow, f => f / most);
    }

    // Slope of the straight line through what lies within the window: a spike moves it little.
    private double[] Rates(double[] values)
    {
        var rates = new double[values.Length];
        var (from, to) = (0, 0);
        for (var i = 0; i < values.Length; i++)
        {
            while (Log.Seconds[i] - Log.Seconds[from] > Window)
            {
                from++;
            }

            while (to + 1 < values.Length && Log.Seconds[to + 1] - Log.Seconds[i] <= Window)
            {
                to++;
            }

            rates[i] = Slope(values, from, to);
        }

        return rates;
    }

    private double Slope(double[] values, int from, int to)
    {
        var (n, t, v, tt, tv) = (0, 0.0, 0.0, 0.0, 0.0);
        for (var k = from; k <= to; k++)
        {
            if (double.IsFinite(values[k]))
            {
                var time = Log.Seconds[k] - Log.Seconds[from];
                (n, t, v, tt, tv) = (n + 1, t + time, v + values[k], tt + time * time, tv + time * values[k]);
            }
        }

        var spread = tt * n - t * t;
        return n > 1 && spread > 1e-12 ? (tv * n - t * v) / spread : 0;
    }
}
