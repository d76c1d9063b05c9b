using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>Runs the drive, the estimate and every remedy.</summary>
public static class GaugeAnalyst
{
    private const double Every = 0.1;
    private const double MeanSeconds = 90;
    private const double Litres = 1000;
    private const double WatchSeconds = 2 * 3600;
    private const double LevelWithin = 0.010;        // m; common practice
    private const double FillFull = 0.8;             // of one tank, after a fill on one side
    private const double FillOther = 0.3;

    /// <summary>Works it all out.</summary>
    /// <param name="setup">Tanks, gauge and road.</param>
    /// <param name="cancellation">Stops between remedies.</param>
    /// <returns>The analysis.</returns>
    public static GaugeAnalysis Of(GaugeSetup setup, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var film = Film(setup, GaugeRemedy.None);
        var levelling = new Dictionary<CrossPipe, double?>(); // most remedies leave the pipe alone, and with it the time to level
        var rows = GaugeRemedies.All.Select(remedy =>
        {
            cancellation.ThrowIfCancellationRequested();
            return Row(setup, remedy, remedy == GaugeRemedy.None ? film : Film(setup, remedy), levelling);
        }).ToList();
        return new GaugeAnalysis(setup, film, rows, GaugeWords.Headline(film), GaugeWords.Answers(setup, film, rows[0]));
    }

    /// <summary>The worst of a drive in two sentences.</summary>
    /// <param name="film">The drive.</param>
    /// <returns>What the needle says, what is there, and how far off it is at the end.</returns>
    public static string Headline(GaugeFilm film)
    {
        ArgumentNullException.ThrowIfNull(film);
        return GaugeWords.Headline(film);
    }

    /// <summary>The drive with a remedy.</summary>
    /// <param name="setup">Tanks, gauge and road.</param>
    /// <param name="remedy">Which.</param>
    /// <returns>The drive.</returns>
    public static GaugeFilm Film(GaugeSetup setup, GaugeRemedy remedy)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var pair = GaugeRemedies.With(setup.Pair, remedy);
        var moments = pair.Run(setup.Road.Trace, setup.Start, Every);
        var table = new SettledGauge(pair);
        var pointer = remedy == GaugeRemedy.Averaging ? Mean(moments.Needles) : moments.Needles;
        var estimate = new FuelEstimator(pair, new FuelEstimateSettings()).Run(moments.EverySeconds, moments.Needles, moments.Ahead, moments.Left);
        return new GaugeFilm
        {
            Pair = pair,
            Moments = moments,
            Pointer = pointer,
            Truth = [.. Enumerable.Range(0, moments.Count).Select(i => Litres * moments.Total(i))],
            Needle = [.. pointer.Select(n => Litres * table.Volume(n))],
            Estimate = [.. estimate.Volumes.Select(v => Litres * v)],
            HalfBand = [.. estimate.HalfBands.Select(v => Litres * v)],
        };
    }

    private static RemedyRow Row(GaugeSetup setup, GaugeRemedy remedy, GaugeFilm film, Dictionary<CrossPipe, double?> levelling)
    {
        if (!levelling.TryGetValue(film.Pair.Pipe, out var minutes))
        {
            levelling[film.Pair.Pipe] = minutes = LevelMinutes(film.Pair);
        }

        var off = film.Needle.Zip(film.Truth, (n, t) => n - t).ToArray();
        return new RemedyRow(
            remedy,
            GaugeRemedies.Words(remedy, setup.Pair),
            Math.Sqrt(off.Average(o => o * o)),
            off.Max(Math.Abs),
            FalseLamps(film),
            minutes);
    }

    private static double[] Mean(IReadOnlyList<double> needles)
    {
        var mean = new double[needles.Count];
        mean[0] = needles[0];
        for (var i = 1; i < mean.Length; i++)
        {
            mean[i] = mean[i - 1] + Math.Min(1, Every / MeanSeconds) * (needles[i] - mean[i - 1]);
        }

        return mean;
    }

    // False: lit while the tanks, standing level, would leave it dark.
    private static int FalseLamps(GaugeFilm film)
    {
        if (film.Pair.Fitting?.Lamp is not { } lamp)
        {
            return 0;
        }

        var pair = film.Pair;
        var own = pair.Fitting.First.Side == TankSide.Left ? (pair.Left, pair.Right) : (pair.Right, pair.Left);
        var other = lamp.LevelMetres + own.Item1.FloorMetres - own.Item2.FloorMetres;
        var enough = Litres * (own.Item1.Table.Volume(lamp.LevelMetres) + own.Item2.Table.Volume(other));
        var lamps = film.Moments.Lamps;
        return Enumerable.Range(1, lamps.Count - 1).Count(i => lamps[i] && !lamps[i - 1] && film.Truth[i] > enough);
    }

    private static double? LevelMinutes(TwoTanks pair)
    {
        var still = pair with { Draw = FuelDraw.None, Fitting = null };
        double Level(TankMoments m, int i) => m.LeftLevels[i] + pair.Left.FloorMetres - m.RightLevels[i] - pair.Right.FloorMetres;
        double? Minutes(double left, double right)
        {
            var m = still.Run(RoadTrace.Standing(WatchSeconds, 0.05), (left * pair.Left.Table.CapacityCubicMetres, right * pair.Right.Table.CapacityCubicMetres), 1);
            var last = Enumerable.Range(0, m.Count).LastOrDefault(i => Math.Abs(Level(m, i)) > LevelWithin, -1);
            return last >= m.Count - 1 ? null : (last + 1) / 60.0;
        }

        // Either side may be filled; the slower counts, which is the one a flap holds back.
        return (Minutes(FillFull, FillOther), Minutes(FillOther, FillFull)) is ({ } a, { } b) ? Math.Max(a, b) : null;
    }
}
