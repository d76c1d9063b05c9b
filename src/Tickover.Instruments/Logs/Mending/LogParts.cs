using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs.Mending;

/// <summary>Takes one part out of a log.</summary>
internal static class LogParts
{
    /// <summary>The part as a log of its own, its time from nought.</summary>
    /// <param name="log">The whole.</param>
    /// <param name="part">The part.</param>
    /// <returns>The part; doubts of the whole stay, but for the one that there are several.</returns>
    internal static RoadLog Take(RoadLog log, LogPart part)
    {
        const double slack = 0.06;                       // the part's ends are rounded to tenths
        var from = Enumerable.Range(0, log.Count).First(i => log.Seconds[i] >= part.StartSeconds - slack);
        var to = Enumerable.Range(0, log.Count).Last(i => log.Seconds[i] <= part.EndSeconds + slack) + 1;
        IReadOnlyList<float>? Cut(IReadOnlyList<float>? channel) => channel?.Skip(from).Take(to - from).ToArray();
        return log with
        {
            Seconds = [.. log.Seconds.Skip(from).Take(to - from).Select(s => s - log.Seconds[from])],
            SpeedRpm = Cut(log.SpeedRpm)!,
            Throttle = Cut(log.Throttle),
            ManifoldPascals = Cut(log.ManifoldPascals),
            Lambdas = [.. log.Lambdas.Select(l => l with { Lambda = Cut(l.Lambda)! })],
            CoolantKelvins = Cut(log.CoolantKelvins),
            OilKelvins = Cut(log.OilKelvins),
            AirKelvins = Cut(log.AirKelvins),
            FuelPressurePascals = Cut(log.FuelPressurePascals),
            RoadMetresPerSecond = Cut(log.RoadMetresPerSecond),
        };
    }
}
