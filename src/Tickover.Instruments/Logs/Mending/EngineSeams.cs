using System.Globalization;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs.Mending;

/// <summary>Finds where a log may end and another begin under the same headings, and whether the engine is another one there.</summary>
/// <remarks>
/// A seam is where the clock starts anew, a minute and more has no rows, or the coolant is 25 K colder all at once. A stop for fuel makes seams too, so a seam alone is no
/// doubt: the engine has to differ as well, by what a driver cannot change (idle speed when warm, pressure at like speed and throttle, road speed at like engine speed in top gear).
/// The limits are common practice.
/// </remarks>
internal sealed class EngineSeams(RoadLog log, IReadOnlyList<int> restarts)
{
    private const double LongGap = 60;                   // s
    private const double Colder = 25;                    // K from one second to the next
    private const double ShortestPart = 30;              // s
    private const int MostParts = 12;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>The parts; none where the log is of one piece.</summary>
    /// <returns>Parts in order of time, and the doubt that they are of two engines; null without one.</returns>
    internal (IReadOnlyList<LogPart> Parts, string? Doubt) Look()
    {
        var (starts, reasons) = Seams();
        if (starts.Count < 2)
        {
            return ([], null);
        }

        var engines = starts.Select((s, k) => EngineMarks.Of(log, s, k + 1 < starts.Count ? starts[k + 1] : log.Count)).ToArray();
        LogPart[] parts = [.. starts.Select((s, k) => Part(s, k + 1 < starts.Count ? starts[k + 1] : log.Count, reasons[k], engines[k]))];
        for (var k = 1; k < engines.Length; k++)
        {
            if (engines[k].Unlike(engines[k - 1]) is { Count: > 0 } unlike)
            {
                return (parts, string.Create(C, $"At {log.Seconds[starts[k]]:0} s {reasons[k]}, and the engine is not the same: {string.Join("; ", unlike)}. There may be two engines in the file. If so, take one part: {string.Join(", ", parts.Select((p, n) => string.Create(C, $"{n + 1} is {p.StartSeconds:0} to {p.EndSeconds:0} s")))}."));
            }
        }

        return (parts, null);
    }

    private (List<int> Starts, List<string> Reasons) Seams()
    {
        var (starts, reasons) = (new List<int> { 0 }, new List<string> { "the file begins" });
        for (var i = 1; i < log.Count && starts.Count < MostParts; i++)
        {
            if (log.Seconds[i] - log.Seconds[starts[^1]] >= ShortestPart && Why(i) is { } why)
            {
                starts.Add(i);
                reasons.Add(why);
            }
        }

        if (starts.Count > 1 && log.Seconds[^1] - log.Seconds[starts[^1]] < ShortestPart)
        {
            starts.RemoveAt(starts.Count - 1);
            reasons.RemoveAt(reasons.Count - 1);
        }

        return (starts, reasons);
    }

    private string? Why(int i)
    {
        var colder = log.CoolantKelvins is { } coolant && coolant[i - 1] - coolant[i] > Colder
            ? string.Create(C, $"the coolant falls from {coolant[i - 1] - 273.15:0} to {coolant[i] - 273.15:0} °C")
            : null;
        var anew = restarts.Contains(i) ? "the clock starts anew" : log.Seconds[i] - log.Seconds[i - 1] > LongGap ? string.Create(C, $"{log.Seconds[i] - log.Seconds[i - 1]:0} s have no rows") : null;
        return anew is null ? colder : colder is null ? anew : $"{anew} and {colder}";
    }

    private LogPart Part(int start, int end, string reason, EngineMarks engine) => new(
        Math.Round(log.Seconds[start], 1),
        Math.Round(log.Seconds[end - 1], 1),
        string.Create(C, $"{log.Seconds[start]:0} to {log.Seconds[end - 1]:0} s, {reason}{engine.Words()}"));
}
