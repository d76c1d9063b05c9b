using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Tickover.Workshop.Calibration;

namespace Tickover.Bench.Road;

/// <summary>Virtual cars with the wrong jets, put right by fit and search and by the habit: runs needed, and whether bands are honest.</summary>
internal static class RoadStudy
{
    private const int MostRuns = 12;
    private const int MostOfOurs = 3;                      // runs: each takes the study longest, and what is asked is two
    private static readonly double[] Levels = [0.60, 0.80, 0.95];
    private static readonly double[] Shares = [0.80, 0.90, 0.95];
    private static readonly int[] RunsShown = [0, 1, 2, 3, 4, 6, 12];

    /// <summary>Runs it.</summary>
    /// <param name="cars">How many cars.</param>
    /// <param name="seed">Seed of everything.</param>
    /// <param name="onlyHabit">Whether to leave our way out, which takes longest.</param>
    /// <param name="from">Where cars are read from.</param>
    /// <param name="keep">Where results are kept; cars already in it are not worked again.</param>
    internal static int Run(int cars, int seed, bool onlyHabit, StudyCars from, StudyKeep keep)
    {
        var clock = Stopwatch.StartNew();
        var found = new StudyResult?[cars];
        foreach (var kept in keep.Read().Where(k => k.Number < cars))
        {
            found[kept.Number] = kept;
        }

        int[] left = [.. Enumerable.Range(0, cars).Where(n => found[n] is null)];
        Parallel.ForEach(Partitioner.Create(left, EnumerablePartitionerOptions.NoBuffering), new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, n =>
        {
            var car = new VirtualCar(n, seed, from);
            var result = WorkBothWays(car, n, onlyHabit) with { Of = keep.Of };
            keep.Add(result);
            found[n] = result;
            Console.Error.WriteLine(Line($"{found.Count(f => f is not null)}/{cars} {car.Name} {n}: best {result.Best:P1}; {string.Join("; ", result.Ways.Select(w => $"{w.Key} {string.Join(' ', w.Value.Scores.Select(s => s.ToString("P0", CultureInfo.InvariantCulture)))}"))} ({clock.Elapsed.TotalSeconds:F0} s)"));
        });

        StudyResult[] all = [.. found.Select(f => f!)];
        Print(Array.ConvertAll(all, f => f.Best), all[0].Ways.Keys.ToDictionary(way => way, way => Array.ConvertAll(all, f => f.Ways[way]), StringComparer.Ordinal), (cars, seed));
        return 0;
    }

    private static StudyResult WorkBothWays(VirtualCar car, int number, bool onlyHabit)
    {
        var ways = new Dictionary<string, RoadCase>(StringComparer.Ordinal) { ["habit"] = Work(car, new HabitChooser(car), MostRuns) };
        if (!onlyHabit)
        {
            ways["fit"] = Work(car, new FittedChooser(), MostOfOurs);
        }

        var best = Math.Max(car.Score(new BestOnTruth(car).Find(ways.Values.Select(way => way.Best!))), ways.Values.Max(way => way.Scores.Max()));
        return new StudyResult("", number, best, ways);
    }

    private static RoadCase Work(VirtualCar car, IChooser chooser, int most)
    {
        var (now, runs, scores, foretold, leftOut) = (car.AsArrived, new List<CalibrationRun>(), new List<double> { car.Score(car.AsArrived) }, default(Tally), default(Tally));
        var best = now;
        while (runs.Count < most)
        {
            runs.Add(new CalibrationRun(Line($"run {runs.Count + 1}"), now, RoadRun.Drive(car, now, runs.Count + 1)));
            var choice = chooser.Choose(now, runs);
            leftOut += choice.LeftOut;
            if (choice.Next is null)
            {
                break;
            }

            now = choice.Next;
            scores.Add(car.Score(now));
            best = scores[^1] >= scores.Max() ? now : best;
            foretold = choice.Expected is { } expected ? Held(car, expected, car.Truth(now), foretold) : foretold;
        }

        return new RoadCase { Name = car.Name, Scores = scores, Best = best, Foretold = foretold, LeftOut = leftOut };
    }

    // the map foretold before the run against the truth of all banks together, at every point that counts
    private static Tally Held(VirtualCar car, PredictedMap expected, TruthMap truth, Tally so)
    {
        for (var p = 0; p < car.Weights.All.Count; p++)
        {
            if (car.Weights.All[p] > 0)
            {
                var band = expected.Band(p);
                var real = truth.At(0, p / truth.Grid.ThrottleDegrees.Count, p % truth.Grid.ThrottleDegrees.Count);
                so += new Tally(real >= band.Richest && real <= band.Leanest ? 1 : 0, 1);
            }
        }

        return so;
    }

    private static void Print(double[] best, Dictionary<string, RoadCase[]> ways, (int Cars, int Seed) of)
    {
        Console.WriteLine(Line($"{of.Cars} cars, seed {of.Seed}. Part of the weighted operating points in target."));
        Console.WriteLine();
        Console.WriteLine("| Way | " + string.Join(" | ", RunsShown.Select(r => Line($"{r} runs, median"))) + " | worst car, end |");
        Console.WriteLine("|---|" + string.Concat(Enumerable.Repeat("--:|", RunsShown.Length + 1)));
        foreach (var (name, cases) in ways)
        {
            Console.WriteLine($"| {name} | " + string.Join(" | ", RunsShown.Select(r => Line($"{Median(cases.Select(c => c.After(r))):P1}"))) + Line($" | {cases.Min(c => c.Scores[^1]):P1} |"));
        }

        Console.WriteLine(Line($"| best set sold, on the truth | {string.Concat(Enumerable.Repeat("| ", RunsShown.Length - 1))}{Median(best):P1} | {best.Min():P1} |"));
        Console.WriteLine();
        Console.WriteLine("| In target | cars that can | " + string.Join(" | ", ways.Keys.Select(w => $"{w}: of those, cars that do | {w}: runs, median of those that can")) + " |");
        Console.WriteLine("|---|--:|" + string.Concat(Enumerable.Repeat("--:|--:|", ways.Count)));
        Array.ForEach(Levels, level => Level(Line($"{level:P0}"), Array.ConvertAll(best, b => b >= level ? level : double.NaN), ways));
        Array.ForEach(Shares, share => Level(Line($"{share:P0} of that car's best"), Array.ConvertAll(best, b => share * b), ways));
        Console.WriteLine();
        foreach (var (name, cases) in ways.Where(w => w.Value.Any(c => c.Foretold.All > 0)))
        {
            Console.WriteLine(Line($"{name}: 90 % bands of readings left out and foretold from the others held {(double)cases.Sum(c => c.LeftOut.Within) / cases.Sum(c => c.LeftOut.All):P1} of {cases.Sum(c => c.LeftOut.All)} readings."));
            Console.WriteLine(Line($"{name}: 90 % bands of maps foretold held {(double)cases.Sum(c => c.Foretold.Within) / cases.Sum(c => c.Foretold.All):P1} of {cases.Sum(c => c.Foretold.All)} points."));
        }
    }

    // not a number: a car that cannot
    private static void Level(string name, double[] asked, Dictionary<string, RoadCase[]> ways)
    {
        int[] can = [.. Enumerable.Range(0, asked.Length).Where(n => !double.IsNaN(asked[n]))];
        var columns = ways.Values.Select(cases => Line($"{can.Count(n => cases[n].RunsTo(asked[n]) is not null)} | {Runs(can.Select(n => cases[n].RunsTo(asked[n])))}"));
        Console.WriteLine(Line($"| {name} | {can.Length} of {asked.Length} | {string.Join(" | ", columns)} |"));
    }

    // never is the longest of all
    private static string Runs(IEnumerable<int?> runs)
    {
        var median = Median(runs.Select(r => (double)(r ?? 999)));
        return double.IsNaN(median) ? "" : median >= 500 ? "never" : median.ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? double.NaN : 0.5 * (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]);
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
