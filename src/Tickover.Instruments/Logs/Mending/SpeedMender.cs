using System.Globalization;

namespace Tickover.Instruments.Logs.Mending;

/// <summary>Takes strays out of an engine speed, and tells whether the pick-up counts double or half.</summary>
internal static class SpeedMender
{
    private const float Fastest = 12_000;                // rpm: above any engine of these cars (common practice)
    private const float Stray = 400;                     // rpm off both neighbours at least, and
    private const float StrayPart = 0.25f;               // as a part of them
    private const double SlowIdle = 480;                 // rpm: no engine here idles slower (common practice 600 to 1 300)
    private const double FastIdle = 1600;
    private const double OverPeak = 1.4;                 // of the speed of peak power
    private const double FastestWithoutCar = 9000;       // rpm
    private const double LongGear = 60;                  // km/h at 1 000 rpm: no top gear is longer (common practice 25 to 50)
    private const double ShortGear = 14;
    private const double Standing = 1;                   // m/s
    private const double Cluster = 0.12;
    private const double ClusterPart = 0.25;
    private const double Moving = 8;                     // m/s

    /// <summary>Takes out strays: single samples far off two neighbours that agree, and speeds no engine reaches.</summary>
    /// <param name="rpm">Speeds, rpm; strays become the mean of their neighbours, or NaN.</param>
    /// <returns>How many.</returns>
    public static long TakeOutStrays(Span<float> rpm)
    {
        var strays = 0L;
        for (var i = 0; i < rpm.Length; i++)
        {
            if (rpm[i] < 0 || rpm[i] > Fastest)
            {
                rpm[i] = float.NaN;
                strays++;
            }
        }

        for (var i = 1; i + 1 < rpm.Length; i++)
        {
            var (before, after) = (rpm[i - 1], rpm[i + 1]);
            var limit = Math.Max(Stray, StrayPart * Math.Min(before, after));
            if (Math.Abs(before - after) < limit / 2 && Math.Abs(rpm[i] - before) > limit && Math.Abs(rpm[i] - after) > limit)
            {
                rpm[i] = (before + after) / 2;
                strays++;
            }
        }

        return strays;
    }

    /// <summary>What to multiply the speed with: 1, 2 or ½.</summary>
    /// <param name="rpm">Speeds, rpm.</param>
    /// <param name="throttle">Throttle as the file has it; empty where there is none.</param>
    /// <param name="road">Road speed, m/s; empty where there is none.</param>
    /// <param name="peak">Speed of peak power, rpm, or null.</param>
    /// <returns>The factor and why; an empty text where nothing speaks for a change.</returns>
    public static (double Factor, string Why) Factor(ReadOnlySpan<float> rpm, ReadOnlySpan<float> throttle, ReadOnlySpan<float> road, double? peak)
    {
        var idle = Idle(rpm, throttle, road);
        var top = Spread.Of(rpm).High;
        var length = GearLength(rpm, road);
        var halved = idle < SlowIdle || length > LongGear;
        var doubled = idle > FastIdle || length < ShortGear || top > (OverPeak * peak ?? FastestWithoutCar);
        var factor = halved ? 2 : 0.5;
        if (halved == doubled || !FitsAfter(factor, idle, top, length, peak))
        {
            return (1, string.Empty);
        }

        var gear = double.IsNaN(length) ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", {length:0} km/h at 1 000");
        var seen = string.Create(CultureInfo.InvariantCulture, $"slowest running {idle:0}, fastest {top:0} as written{gear}");
        return (factor, $"the pick-up counts {(halved ? "half" : "double")}: {seen}");
    }

    private static bool FitsAfter(double factor, double idle, double top, double length, double? peak) =>
        (double.IsNaN(idle) || factor * idle is >= SlowIdle and <= FastIdle)
        && factor * top <= (OverPeak * peak ?? FastestWithoutCar)
        && (double.IsNaN(length) || length / factor is >= ShortGear and <= LongGear);

    // Where the slowest tenth of what runs ends, with the throttle near shut and the car standing where that is known. Overrun
    // and cranking spread over all speeds; idle is a cluster.
    private static double Idle(ReadOnlySpan<float> rpm, ReadOnlySpan<float> throttle, ReadOnlySpan<float> road)
    {
        var shut = throttle.IsEmpty ? default : Spread.Of(throttle);
        var near = shut.Low + 0.05 * (shut.High - shut.Low);
        var speeds = new List<float>();
        var stride = Math.Max(1, rpm.Length / 40_000);
        for (var i = 0; i < rpm.Length; i += stride)
        {
            if (rpm[i] > 150 && (throttle.IsEmpty || throttle[i] <= near) && (road.IsEmpty || !(road[i] > Standing)))
            {
                speeds.Add(rpm[i]);
            }
        }

        if (speeds.Count < 20)
        {
            return double.NaN;
        }

        speeds.Sort();
        var idle = speeds[speeds.Count / 10];
        return speeds.Count(s => Math.Abs(s - idle) < Cluster * idle) >= ClusterPart * speeds.Count ? idle : double.NaN;
    }

    // km/h at 1 000 rpm in the longest gear used.
    private static double GearLength(ReadOnlySpan<float> rpm, ReadOnlySpan<float> road)
    {
        var lengths = new List<double>();
        for (var i = 0; i < road.Length; i++)
        {
            if (road[i] > Moving && rpm[i] > 150)
            {
                lengths.Add(road[i] * 3.6 / rpm[i] * 1000);
            }
        }

        lengths.Sort();
        return lengths.Count < 50 ? double.NaN : lengths[(int)(0.8 * lengths.Count)];
    }
}
