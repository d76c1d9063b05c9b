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
    internal static int Run(int cars, int seed, bool onlyHabit, StudyCars from)
    {
        var clock = Stopwatch.StartNew();
        var (best, ways) = (new double[cars], new Dictionary<string, RoadCase[]>(StringComparer.Ordinal) { ["habit"] = new RoadCase[cars] });
        if (!onlyHabit)
        {
            ways["fit"] = new RoadCase[cars];
        }

        var done = 0;
        Parallel.For(0, cars, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, n =>
        {
            var car = new VirtualCar(n, seed, from);
            ways["habit"][n] = Work(car, new HabitChooser(car), MostRuns);
            if (!onlyHabit)
            {
                ways["fit"][n] = Work(car, new FittedChooser(), MostOfOurs);
            }

            best[n] = Math.Max(car.Score(new BestOnTruth(car).Find(ways.Values.Select(way => way[n].Best))), ways.Values.Max(way => way[n].Scores.Max()));
            Console.Error.WriteLine(Line($"{Interlocked.Increment(ref done)}/{cars} {car.Name} {n}: best {best[n]:P1}; {string.Join("; ", ways.Select(w => $"{w.Key} {string.Join(' ', w.Value[n].Scores.Select(s => s.ToString("P0", CultureInfo.InvariantCulture)))}"))} ({clock.Elapsed.TotalSeconds:F0} s)"));
        });

        Print(best, ways, (cars, seed));
        return 0;
    }

    private static RoadCase Work(VirtualCar car, IChooser chooser, int most)
    {
        var (now, runs, scores, foretold, leftOut) = (car.AsArrived, new List<CalibrationRun>(), new List<double> { car.Score(car.AsArrived) }, (Within: 0, All: 0), (Within: 0, All: 0));
        var best = now;
        while (runs.Count < most)
        {
            runs.Add(new CalibrationRun(Line($"run {runs.Count + 1}"), now, RoadRun.Drive(car, now, runs.Count + 1)));
            var choice = chooser.Choose(now, runs);
            leftOut = (leftOut.Within + choice.LeftOut.Within, leftOut.All + choice.LeftOut.All);
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
    private static (int Within, int All) Held(VirtualCar car, PredictedMap expected, TruthMap truth, (int Within, int All) so)
    {
        for (var p = 0; p < car.Weights.All.Count; p++)
        {
            if (car.Weights.All[p] > 0)
            {
                var band = expected.Band(p);
                var real = truth.At(0, p / truth.Grid.ThrottleDegrees.Count, p % truth.Grid.ThrottleDegrees.Count);
                so = (so.Within + (real >= band.Richest && real <= band.Leanest ? 1 : 0), so.All + 1);
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
