using System.Globalization;

namespace Tickover.Workshop.Logs;

/// <summary>Degrees of the plate from a throttle channel: finds where it is shut and where wide open.</summary>
internal sealed class ThrottleMarks
{
    private const double Tail = 0.01;
    private const double NearBarometer = 0.93;           // of it: hardly any depression, so wide open or nearly
    private const double PullRpm = 2000;                 // below, the pressure comes near the barometer half open too
    private const double PerCentFull = 100;
    private const double NearFull = 0.85;                // of full scale: some carburettors' stops and sensors end there

    private ThrottleMarks(double closed, double wide, double[]? degrees, string? doubt) => (Closed, Wide, Degrees, Doubt) = (closed, wide, degrees, doubt);

    internal double Closed { get; }

    internal double Wide { get; }

    /// <summary>Opening from seated, degrees; null without a throttle.</summary>
    internal double[]? Degrees { get; }

    internal string? Doubt { get; }

    internal static ThrottleMarks Of(LogGrid grid, ThrottleScale scale, LogPointSettings settings, double wideDegrees, double barometer)
    {
        if (grid.Throttle is not { } throttle)
        {
            return new(double.NaN, double.NaN, null, "There is no throttle in the log: openings are told from the manifold pressure, and fast openings cannot be seen.");
        }

        if (scale is ThrottleScale.Degrees)
        {
            return new(double.NaN, double.NaN, throttle, null);
        }

        var running = Enumerable.Range(0, grid.Count).Where(i => double.IsFinite(throttle[i]) && grid.SpeedRpm[i] > 400).Select(i => throttle[i]).Order().ToArray();
        if (running.Length == 0)
        {
            return new(double.NaN, double.NaN, null, "The throttle has no figures while the engine runs.");
        }

        var closed = settings.ClosedMark ?? running[(int)(Tail * (running.Length - 1))];
        var (wide, doubt) = settings.WideMark is { } told ? (told, null) : FindWide(grid, throttle, running[^(1 + (int)(Tail / 4 * (running.Length - 1)))], barometer);
        if (wide <= closed)
        {
            return new(closed, wide, null, "The throttle's marks for shut and wide open are the same or the wrong way round: name them.");
        }

        var degrees = throttle.Select(t => Math.Clamp((t - closed) / (wide - closed), 0, 1) * (wideDegrees - settings.StopDegrees) + settings.StopDegrees).ToArray();
        return new(closed, wide, degrees, doubt);
    }

    private static (double Wide, string? Doubt) FindWide(LogGrid grid, double[] throttle, double most, double barometer)
    {
        if (grid.Manifold is { } manifold)
        {
            var open = Enumerable.Range(0, grid.Count)
                .Where(i => manifold[i] > NearBarometer * barometer && grid.SpeedRpm[i] > PullRpm && throttle[i] > 0.8 * most)
                .Select(i => throttle[i]).Order().ToArray();
            if (open.Length * grid.Step >= 1)
            {
                return (open[(int)(0.9 * (open.Length - 1))], null);
            }
        }

        // Percent, a part of one or five volts: what full scale would be.
        var full = most <= 1.3 ? 1 : most <= 5.5 ? double.NaN : PerCentFull;
        if (most >= NearFull * full)
        {
            return (most, null);
        }

        var wide = double.IsNaN(full) ? most : full;
        return (wide, string.Create(CultureInfo.InvariantCulture, $"The throttle was never seen wide open: {wide:0.##} is taken for it. Press the pedal down with the engine off while logging, or name the mark."));
    }
}
