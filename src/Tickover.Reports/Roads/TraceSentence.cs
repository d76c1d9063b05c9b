using System.Globalization;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Roads;

/// <summary>The sentence that stands for the picture of a road log.</summary>
internal static class TraceSentence
{
    internal static string Of(TraceView view)
    {
        var trace = view.Trace;
        var end = trace.Seconds.Count > 0 ? trace.Seconds[^1] : 0;
        var regimes = trace.Stretches.GroupBy(s => s.Regime)
            .OrderBy(g => g.Key)
            .Select(g => string.Create(CultureInfo.InvariantCulture, $"{RegimeNames.Of(g.Key)} {g.Sum(s => s.EndSeconds - s.StartSeconds):0} s"))
            .ToArray();
        var steady = regimes.Length == 0 ? "nothing steady" : $"steady {string.Join(", ", regimes)}";
        var left = trace.LeftOut.GroupBy(s => s.Why, StringComparer.Ordinal).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Key} {g.Sum(s => s.EndSeconds - s.StartSeconds):0} s"));
        var leftOut = trace.LeftOut.Count == 0 ? string.Empty : $"; left out: {string.Join(", ", left)}";
        return string.Create(CultureInfo.InvariantCulture, $"Road log {view.Name}, {TraceTime.Words(end)} long: {steady}; {trace.TipInSeconds.Count} fast openings{leftOut}.");
    }
}
