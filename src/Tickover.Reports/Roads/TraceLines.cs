using Tickover.Reports.Charts;

namespace Tickover.Reports.Roads;

/// <summary>Makes lines of a channel, thinned to the picture: of each place across, the least and the most.</summary>
internal static class TraceLines
{
    private const double LongestBridge = 3;              // spans of the trace without a figure that a line still crosses

    internal static IReadOnlyList<Polyline> Of(IReadOnlyList<double> seconds, IReadOnlyList<double?> channel, Scale time, Scale scale)
    {
        var (lines, line, missing) = (new List<Polyline>(), new List<ChartPoint>(), 0);
        foreach (var (second, figure) in Thinned(seconds, channel, Math.Abs(time.Places.To - time.Places.From)))
        {
            if (figure is { } value && double.IsFinite(value))
            {
                line.Add(new ChartPoint(time.ToPlace(second), scale.ToPlace(value)));
                missing = 0;
            }
            else if (++missing > LongestBridge)
            {
                Finish(lines, line);
            }
        }

        Finish(lines, line);
        return lines;
    }

    private static void Finish(List<Polyline> lines, List<ChartPoint> line)
    {
        if (line.Count > 1)
        {
            lines.Add(new Polyline([.. line], Closed: false));
        }

        line.Clear();
    }

    private static IEnumerable<(double Second, double? Figure)> Thinned(IReadOnlyList<double> seconds, IReadOnlyList<double?> channel, double places)
    {
        var count = Math.Min(seconds.Count, channel.Count);
        var group = Math.Max(1, (int)Math.Ceiling(count / (2 * Math.Max(1, places))));
        for (var from = 0; from < count; from += 2 * group)
        {
            var rows = Enumerable.Range(from, Math.Min(2 * group, count - from)).ToArray();
            var known = rows.Where(i => channel[i] is not null).ToArray();
            if (known.Length == 0)
            {
                yield return (seconds[from], null);
                continue;
            }

            var (least, most) = (known.MinBy(i => channel[i]), known.MaxBy(i => channel[i]));
            yield return (seconds[Math.Min(least, most)], channel[Math.Min(least, most)]);
            if (least != most)
            {
                yield return (seconds[Math.Max(least, most)], channel[Math.Max(least, most)]);
            }
        }
    }
}
