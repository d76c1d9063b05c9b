namespace Tickover.Workshop.Logs;

/// <summary>A log on an even clock of a tenth of a second or its own pace if that is slower; every cell the mean of its samples.</summary>
internal sealed class LogGrid
{
    private const double Finest = 0.1;                   // s: three times faster than any λ sensor follows
    private const double Hold = 1.0;                     // s: gaps up to this are bridged

    private readonly IReadOnlyList<double> _seconds;

    internal LogGrid(RoadLog log)
    {
        _seconds = log.Seconds;
        var steps = _seconds.Zip(_seconds.Skip(1), (a, b) => b - a).Order().ToArray();
        Step = Math.Max(Finest, steps.Length == 0 ? Finest : steps[steps.Length / 2]);
        Count = log.Count == 0 ? 0 : (int)Math.Min(50_000_000, (_seconds[^1] - _seconds[0]) / Step) + 1;
        SpeedRpm = On(log.SpeedRpm)!;
        Throttle = On(log.Throttle);
        Manifold = On(log.ManifoldPascals);
        Coolant = On(log.CoolantKelvins);
        Oil = On(log.OilKelvins);
        Road = On(log.RoadMetresPerSecond);
        Fuel = On(log.FuelPressurePascals);
        Lambdas = [.. log.Lambdas.Select(l => On(l.Lambda)!)];
    }

    internal double Step { get; }

    internal int Count { get; }

    internal double[] SpeedRpm { get; }

    internal double[]? Throttle { get; }

    internal double[]? Manifold { get; }

    internal double[]? Coolant { get; }

    internal double[]? Oil { get; }

    internal double[]? Road { get; }

    internal double[]? Fuel { get; }

    internal double[][] Lambdas { get; }

    /// <summary>A channel between its cells; NaN outside and where a neighbour is missing.</summary>
    internal static double Between(double[] channel, double cell)
    {
        var i = (int)Math.Floor(cell);
        if (i < 0 || i + 1 >= channel.Length)
        {
            return double.NaN;
        }

        var part = cell - i;
        return channel[i] + part * (channel[i + 1] - channel[i]);
    }

    private double[]? On(IReadOnlyList<float>? samples)
    {
        if (samples is null)
        {
            return null;
        }

        var (sums, counts) = (new double[Count], new int[Count]);
        for (var i = 0; i < samples.Count; i++)
        {
            if (float.IsFinite(samples[i]))
            {
                var cell = Math.Min(Count - 1, (int)((_seconds[i] - _seconds[0]) / Step));
                sums[cell] += samples[i];
                counts[cell]++;
            }
        }

        for (var i = 0; i < Count; i++)
        {
            sums[i] = counts[i] == 0 ? double.NaN : sums[i] / counts[i];
        }

        Bridge(sums);
        return sums;
    }

    private void Bridge(double[] channel)
    {
        var last = -1;
        for (var i = 0; i < channel.Length; i++)
        {
            if (double.IsNaN(channel[i]))
            {
                continue;
            }

            if (last >= 0 && i - last > 1 && (i - last) * Step <= Hold + Step / 2)
            {
                for (var k = last + 1; k < i; k++)
                {
                    channel[k] = channel[last] + (channel[i] - channel[last]) * (k - last) / (i - last);
                }
            }

            last = i;
        }
    }
}
