using System.Globalization;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs.Mending;

/// <summary>What tells one engine, in its car, from another whatever the driver does.</summary>
internal sealed class EngineMarks
{
    private const double Warm = 343;                     // K
    private const double SlowestIdle = 400;              // rpm
    private const double FastestIdle = 1500;
    private const double AtStop = 0.03;                  // of the throttle's span
    private const int FewestAtIdle = 30;
    private const double IdleApart = 0.20;               // of the slower idle
    private const double RpmCell = 400;
    private const int ThrottleCells = 12;
    private const int FewestInCell = 5;
    private const int FewestCells = 3;
    private const double PressureApart = 6_000;          // Pa at like speed and throttle, nearly everywhere
    private const double PartLoad = 80_000;              // Pa: wide open every engine comes near the barometer
    private const double OnTheRoad = 10;                 // m/s
    private const int FewestOnTheRoad = 100;
    private const double GearingApart = 0.08;            // of the road speed in top gear
    private const double TopGear = 0.95;                 // quantile of road speed over engine speed
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    private readonly Dictionary<(int, int), double> _pressures = [];
    private double? _idle;
    private double? _gearing;                            // km/h at 1 000 rpm in top gear

    private EngineMarks()
    {
    }

    /// <summary>Looks at a part of a log.</summary>
    /// <param name="log">The log.</param>
    /// <param name="from">Its first sample.</param>
    /// <param name="to">Behind its last.</param>
    internal static EngineMarks Of(RoadLog log, int from, int to)
    {
        var marks = new EngineMarks();
        var rows = Enumerable.Range(from, to - from).Where(i => log.SpeedRpm[i] > SlowestIdle).ToArray();
        marks._idle = Idle(log, rows);
        marks._gearing = Gearing(log, rows);
        marks.Press(log, rows);
        return marks;
    }

    /// <summary>In what this engine is not like another; empty where nothing tells.</summary>
    /// <param name="other">The other.</param>
    internal IReadOnlyList<string> Unlike(EngineMarks other)
    {
        var unlike = new List<string>();
        if (_idle is { } idle && other._idle is { } before && Math.Abs(idle - before) > IdleApart * Math.Min(idle, before))
        {
            unlike.Add(string.Create(C, $"warm, it idles at {idle:0} rpm and at {before:0} before"));
        }

        var apart = _pressures.Where(p => other._pressures.ContainsKey(p.Key)).Select(p => p.Value - other._pressures[p.Key]).Order().ToArray();
        if (apart.Length >= FewestCells && (apart[apart.Length / 4] > PressureApart || apart[3 * apart.Length / 4] < -PressureApart))
        {
            unlike.Add(string.Create(C, $"at like speed and throttle the manifold pressure is {Math.Abs(apart[apart.Length / 2]) / 1000:0} kPa {(apart[apart.Length / 2] > 0 ? "higher" : "lower")}"));
        }

        if (_gearing is { } gearing && other._gearing is { } geared && Math.Abs(gearing - geared) > GearingApart * Math.Min(gearing, geared))
        {
            unlike.Add(string.Create(C, $"in top gear it does {gearing:0} km/h at 1,000 rpm and {geared:0} before"));
        }

        return unlike;
    }

    /// <summary>What it is like, to go behind a part's other words.</summary>
    internal string Words() => string.Concat(
        _idle is { } idle ? string.Create(C, $", idles at {idle:0} rpm") : string.Empty,
        _gearing is { } gearing ? string.Create(C, $", {gearing:0} km/h at 1,000 rpm in top gear") : string.Empty);

    private static double? Idle(RoadLog log, int[] rows)
    {
        if (log.Throttle is not { } throttle || rows.Length == 0)
        {
            return null;
        }

        var sorted = rows.Select(i => throttle[i]).Where(float.IsFinite).Order().ToArray();
        if (sorted.Length == 0)
        {
            return null;
        }

        var stop = sorted[sorted.Length / 100] + AtStop * (sorted[^1] - sorted[0]);
        var idle = rows.Where(i => throttle[i] <= stop && log.SpeedRpm[i] < FastestIdle && !(log.CoolantKelvins?[i] < Warm) && !(log.RoadMetresPerSecond?[i] > 1))
            .Select(i => (double)log.SpeedRpm[i]).Order().ToArray();
        return idle.Length < FewestAtIdle ? null : idle[idle.Length / 2];
    }

    private static double? Gearing(RoadLog log, int[] rows)
    {
        if (log.RoadMetresPerSecond is not { } road)
        {
            return null;
        }

        const double perHourAtThousand = 3.6 * 1000;
        var ratios = rows.Where(i => road[i] > OnTheRoad).Select(i => perHourAtThousand * road[i] / log.SpeedRpm[i]).Order().ToArray();
        return ratios.Length < FewestOnTheRoad ? null : ratios[(int)(TopGear * (ratios.Length - 1))];
    }

    private void Press(RoadLog log, int[] rows)
    {
        if (log.Throttle is not { } throttle || log.ManifoldPascals is not { } pressure || rows.Length == 0)
        {
            return;
        }

        // Cells of the whole log's span, so that those of two parts are the same.
        var span = log.Throttle.Where(float.IsFinite).DefaultIfEmpty(0).Max() - log.Throttle.Where(float.IsFinite).DefaultIfEmpty(0).Min();
        var cells = rows.Where(i => float.IsFinite(throttle[i]) && float.IsFinite(pressure[i]))
            .GroupBy(i => ((int)(log.SpeedRpm[i] / RpmCell), span > 0 ? (int)(ThrottleCells * throttle[i] / span) : 0));
        foreach (var cell in cells.Where(c => c.Count() >= FewestInCell))
        {
            var sorted = cell.Select(i => (double)pressure[i]).Order().ToArray();
            if (sorted[sorted.Length / 2] < PartLoad)
            {
                _pressures[cell.Key] = sorted[sorted.Length / 2];
            }
        }
    }
}
