namespace Tickover.Workshop.Logs;

/// <summary>Thins a log to a trace a picture can show. Of each span two moments stay, with the least and the most of every channel in the order they came.</summary>
internal static class LogTracing
{
    private const int MostSpans = 750;                   // two moments each: more than a page has pixels across
    private const int FewestCells = 8;                   // of a span left out that is worth a mark: 0.8 s

    internal static LogTrace Of(LogView view, double[][] aligned, IReadOnlyList<LogStretch> stretches)
    {
        var grid = view.Grid;
        var cells = Math.Max(1, (int)Math.Ceiling(grid.Count / (double)MostSpans));
        return new LogTrace
        {
            Seconds = Moments(grid, cells),
            SpeedRpm = Thin(grid.SpeedRpm, cells, 1, 0),
            ThrottleDegrees = view.Marks.Degrees is { } degrees ? Thin(degrees, cells, 1, 1) : null,
            ManifoldKilopascals = grid.Manifold is { } manifold ? Thin(manifold, cells, 1e-3, 1) : null,
            Lambdas = [.. aligned.Select((lambda, c) => new LogTraceLambda(view.Log.Lambdas[c].Bank, Thin(lambda, cells, 1, 3)))],
            Stretches = Joined(stretches.Where(s => s.Regime is not Regime.TipIn), grid.Step),
            TipInSeconds = [.. stretches.Where(s => s.Regime is Regime.TipIn).Select(s => Math.Round(s.StartSeconds, 1))],
            LeftOut = LeftOut(view),
        };
    }

    private static double[] Moments(LogGrid grid, int cells)
    {
        var moments = new List<double>();
        for (var from = 0; from < grid.Count; from += cells)
        {
            var width = Math.Min(cells, grid.Count - from);
            moments.Add(Math.Round((from + 0.25 * (width - 1)) * grid.Step, 2));
            if (width > 1)
            {
                moments.Add(Math.Round((from + 0.75 * (width - 1)) * grid.Step, 2));
            }
        }

        return [.. moments];
    }

    private static double?[] Thin(double[] channel, int cells, double scale, int digits)
    {
        var thin = new List<double?>();
        for (var from = 0; from < channel.Length; from += cells)
        {
            var to = Math.Min(channel.Length, from + cells);
            var (least, most) = (-1, -1);
            for (var i = from; i < to; i++)
            {
                if (double.IsFinite(channel[i]))
                {
                    least = least < 0 || channel[i] < channel[least] ? i : least;
                    most = most < 0 || channel[i] >= channel[most] ? i : most;
                }
            }

            thin.Add(Figure(channel, Math.Min(least, most), scale, digits));
            if (to - from > 1)
            {
                thin.Add(Figure(channel, Math.Max(least, most), scale, digits));
            }
        }

        return [.. thin];
    }

    private static double? Figure(double[] channel, int at, double scale, int digits) => at < 0 ? null : Math.Round(channel[at] * scale, digits);

    // Pieces of one pull and of one long stretch are one shade.
    private static List<LogStretch> Joined(IEnumerable<LogStretch> stretches, double step)
    {
        var joined = new List<LogStretch>();
        foreach (var stretch in stretches)
        {
            var (start, end) = (Math.Round(stretch.StartSeconds, 1), Math.Round(stretch.EndSeconds, 1));
            if (joined is [.., var last] && last.Regime == stretch.Regime && start - last.EndSeconds <= 2 * step)
            {
                joined[^1] = last with { EndSeconds = end };
            }
            else
            {
                joined.Add(new LogStretch(start, end, stretch.Regime));
            }
        }

        return joined;
    }

    private static List<LogSpan> LeftOut(LogView view)
    {
        var (spans, from, why) = (new List<LogSpan>(), 0, Why(view, 0));
        for (var i = 1; i <= view.Grid.Count; i++)
        {
            var next = i < view.Grid.Count ? Why(view, i) : null;
            if (i < view.Grid.Count && string.Equals(next, why, StringComparison.Ordinal))
            {
                continue;
            }

            if (why is not null && i - from >= FewestCells)
            {
                spans.Add(new LogSpan(Math.Round(from * view.Grid.Step, 1), Math.Round(i * view.Grid.Step, 1), why));
            }

            (from, why) = (i, next);
        }

        return spans;
    }

    private static string? Why(LogView view, int i) =>
        i >= view.Grid.Count ? null : !view.Runs(i) ? "not running, or no rows" : view.IsCold(i) ? "engine cold" : null;
}
