namespace Tickover.Instruments.Logs.Mending;

/// <summary>Makes a clock that wraps, restarts, repeats or changes its zone run forward.</summary>
internal sealed class TimeMender
{
    private const double Zone = 1800;                    // s: time zones differ by half hours
    private const double ZoneSlack = 2;                  // s
    private const double MostZones = 28;                 // fourteen hours
    private const double Day = 86_400;
    private const double Again = 10;                     // s: a block sent twice goes back no further
    private const double FromStart = 5;                  // s: a clock that restarts begins near nought
    private const double LongGap = 5;                    // s without rows
    private const double AfterRestart = 30;              // s put in where nobody knows how long the logger was off

    // Clocks roll over at a minute, an hour, half a day, a day, 16 bits of ms, 32 bits of µs and of ms.
    private static readonly double[] Wraps = [60, 3600, 43_200, Day, 65.536, 655.36, 1000, 4294.967296, 4_294_967.296, 10_000];

    private readonly Dictionary<string, long> _repairs = new(StringComparer.Ordinal);
    private readonly List<int> _restarts = [];
    private double _step;
    private double _offset;
    private double _first;
    private bool _again;
    private bool _anew;

    /// <summary>What was mended, and how often.</summary>
    public IEnumerable<LogCount> Repairs => _repairs.Select(r => new LogCount(r.Key, r.Value));

    /// <summary>Samples that stay, counted from nought among those, before which the clock started anew or was set.</summary>
    public IReadOnlyList<int> Restarts => _restarts;

    /// <summary>Rows left out because their time was there already.</summary>
    public long AlreadySeen { get; private set; }

    /// <summary>Mends.</summary>
    /// <param name="times">Times, s.</param>
    /// <param name="kept">Receives which samples stay.</param>
    /// <returns>Times from the first sample that stays, s, strictly rising over those that stay.</returns>
    public double[] Mend(ReadOnlySpan<double> times, bool[] kept)
    {
        var mended = new double[times.Length];
        if (times.Length == 0)
        {
            return mended;
        }

        _step = TimeUnit.Step(times) is var step and > 0 ? step : 1;
        (_first, _offset) = (times[0], -times[0]);
        var last = times[0];
        for (var i = 0; i < times.Length; i++)
        {
            kept[i] = !(_again && times[i] <= last) && Forward(times[i], last);
            _again = !kept[i];
            if (kept[i])
            {
                if (_anew)
                {
                    _restarts.Add(i - (int)AlreadySeen);
                    _anew = false;
                }

                mended[i] = times[i] + _offset;
                last = times[i];
            }
            else
            {
                AlreadySeen++;
            }
        }

        SpreadRepeats(mended, kept);
        return mended;
    }

    private bool Forward(double now, double last)
    {
        var gone = now - last;
        if (gone >= 0)
        {
            Ahead(gone);
            return true;
        }

        if (Array.Exists(Wraps, w => Math.Abs(w + gone - _step) <= Math.Max(3 * _step, 1e-3 * w) && now < 0.05 * w))
        {
            Shift(-gone + _step, "clock rolled over");
        }
        else if (IsZone(-gone))
        {
            Shift(-gone + _step, "clock changed between local time and UTC");
        }
        else if (now <= _first + FromStart || now <= FromStart || -gone > Again)
        {
            Shift(-gone + AfterRestart, "clock restarted");
            _anew = true;
            _first = now;
        }
        else
        {
            return false;
        }

        return true;
    }

    private void Ahead(double gone)
    {
        if (gone > Day)
        {
            Shift(AfterRestart - gone, "clock was set");
            _anew = true;
        }
        else if (IsZone(gone))
        {
            Shift(_step - gone, "clock changed between local time and UTC");
        }
        else if (gone > Math.Max(LongGap, 20 * _step))
        {
            Count("gap without rows (left as it is)");
        }
    }

    private bool IsZone(double seconds)
    {
        var zones = Math.Round(seconds / Zone);
        return zones is >= 1 and <= MostZones && Math.Abs(seconds - zones * Zone) <= Math.Max(ZoneSlack, 3 * _step);
    }

    private void Shift(double seconds, string what)
    {
        _offset += seconds;
        Count(what);
    }

    private void Count(string what, long more = 1) => _repairs[what] = _repairs.GetValueOrDefault(what) + more;

    // Rows that share a time stand evenly between it and the next.
    private void SpreadRepeats(double[] times, bool[] kept)
    {
        var rows = Enumerable.Range(0, times.Length).Where(i => kept[i]).ToArray();
        var repeated = 0L;
        for (var from = 0; from < rows.Length;)
        {
            var to = from + 1;
            while (to < rows.Length && times[rows[to]] <= times[rows[from]])
            {
                to++;
            }

            var room = to < rows.Length ? Math.Min(times[rows[to]] - times[rows[from]], Math.Max(_step, 1)) : _step;
            for (var k = from + 1; k < to; k++)
            {
                times[rows[k]] = times[rows[from]] + room * (k - from) / (to - from);
                repeated++;
            }

            from = to;
        }

        if (repeated > 0)
        {
            Count("time repeated (spread up to the next)", repeated);
        }
    }
}
