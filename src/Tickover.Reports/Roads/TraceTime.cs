using System.Globalization;

namespace Tickover.Reports.Roads;

/// <summary>Time along a log as people say it.</summary>
public static class TraceTime
{
    private static readonly double[] Steps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400];

    /// <summary>Minutes and seconds, such as "4:05"; with hours where there are any.</summary>
    /// <param name="seconds">Time from the start, s; 0 or more.</param>
    /// <returns>The words.</returns>
    public static string Words(double seconds)
    {
        var whole = (long)Math.Round(seconds);
        return whole < 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}");
    }

    /// <summary>Round times from nought to the end, so many at most.</summary>
    /// <param name="end">The last time, s; above 0.</param>
    /// <param name="most">How many there may be; 2 or more.</param>
    /// <returns>The times, s.</returns>
    public static IReadOnlyList<double> Ticks(double end, int most)
    {
        var step = Array.Find(Steps, s => end / s < most) is var found and > 0 ? found : Steps[^1] * Math.Ceiling(end / Steps[^1] / most);
        return [.. Enumerable.Range(0, (int)(end / step) + 1).Select(i => i * step)];
    }
}
