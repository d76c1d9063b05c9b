namespace Tickover.Workshop.Logs;

/// <summary>Cuts a log into steady stretches, pulls and fast openings.</summary>
internal sealed class StretchFinder(LogView view)
{
    private const double DegreesApart = 0.8;             // from the stretch's mean, and
    private const double DegreesPart = 0.06;             // of it
    private const double RpmApart = 60;
    private const double RpmPart = 0.04;
    private const double PullRpmPart = 0.06;             // a pull is cut into bands of speed
    private const double PascalsApart = 4000;
    private const double ShortestPull = 0.5;             // s
    private const double Settling = 1.0;                 // s after a change: fuel film on the walls (common practice)
    private const double OverrunSettling = 2.5;          // s: air in the pipe and the film dried out
    private const double PullSettling = 0.4;
    private const double FastOpening = 10;               // degrees within
    private const double OpeningTime = 0.5;              // s
    private const double TipInLasts = 2.5;               // s

    private readonly LogGrid _grid = view.Grid;

    /// <summary>A stretch as cells: from the first to before the last.</summary>
    internal readonly record struct Cells(int From, int To, Regime Regime);

    /// <summary>Starts of fast openings, cells.</summary>
    internal List<int> TipIns()
    {
        var starts = new List<int>();
        if (view.Marks.Degrees is not { } degrees)
        {
            return starts;
        }

        var reach = Math.Max(1, (int)Math.Round(OpeningTime / _grid.Step));
        for (var i = 0; i + reach < degrees.Length; i++)
        {
            if (degrees[i + reach] - degrees[i] > FastOpening && view.Runs(i))
            {
                // The steepest start of this opening, then on to after it.
                while (i + 1 + reach < degrees.Length && degrees[i + 1] - degrees[i] < 0.1 * FastOpening)
                {
                    i++;
                }

                starts.Add(i);
                i += (int)(TipInLasts / _grid.Step);
            }
        }

        return starts;
    }

    /// <summary>Steady stretches and pieces of pulls, in order.</summary>
    internal IEnumerable<Cells> Steady()
    {
        var (at, settled, lastOverrun) = (0, false, int.MinValue / 2);
        while (at < _grid.Count)
        {
            if (!view.Usable(at))
            {
                (at, settled) = (at + 1, false);
                continue;
            }

            var regime = view.RegimeOf(view.At(at));
            var full = regime is Regime.FullLoad or Regime.Overrun;
            var afterOverrun = at - lastOverrun <= CellsIn(OverrunSettling);
            var (end, whole) = Grow(at, regime);
            var from = settled ? at : at + CellsIn(full ? PullSettling : afterOverrun ? OverrunSettling : Settling);
            if ((end - from) * _grid.Step >= (full ? ShortestPull : view.Settings.ShortestSeconds) - _grid.Step / 2)
            {
                yield return new Cells(from, end, view.RegimeOf(view.Mean(from, end)));
                (at, settled) = (end, whole || regime is Regime.FullLoad);
            }
            else
            {
                (at, settled) = (at + 1, false);
            }

            lastOverrun = regime is Regime.Overrun ? at : lastOverrun;
        }
    }

    private int CellsIn(double seconds) => (int)Math.Round(seconds / _grid.Step);

    // Grows as long as nothing leaves the band round the mean so far; whole where only the length ended it.
    private (int End, bool Whole) Grow(int start, Regime regime)
    {
        var most = start + CellsIn(view.Settings.LongestSeconds);
        var mean = view.At(start);
        var end = start + 1;
        while (end < _grid.Count && end < most && view.Usable(end) && Stays(mean, view.At(end), regime))
        {
            var (n, next) = (end - start + 1.0, view.At(end));
            mean = new(
                mean.SpeedRpm + (next.SpeedRpm - mean.SpeedRpm) / n,
                mean.Degrees + (next.Degrees - mean.Degrees) / n,
                mean.ManifoldPascals + (next.ManifoldPascals - mean.ManifoldPascals) / n,
                0);
            end++;
        }

        return (end, end == most);
    }

    private static bool Stays(in LogMoment mean, in LogMoment next, Regime regime)
    {
        // On the overrun nothing is measured but how long it lasts: the speed may fall as it likes.
        var full = regime is Regime.FullLoad;
        var (degrees, rpm) = (Math.Abs(next.Degrees - mean.Degrees), Math.Abs(next.SpeedRpm - mean.SpeedRpm));
        return !(degrees > (full ? 2 : 1) * (DegreesApart + DegreesPart * mean.Degrees))
            && (regime is Regime.Overrun || rpm <= Math.Max(RpmApart, (full ? PullRpmPart : RpmPart) * mean.SpeedRpm))
            && !(regime is not Regime.Overrun && Math.Abs(next.ManifoldPascals - mean.ManifoldPascals) > PascalsApart);
    }
}
