using System.Globalization;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>Develops a car as its maker would have: four progression holes, four rows of emulsion holes, level and jets, until the model's map is as near target as a random walk brings it.</summary>
/// <remarks>Seed and number of steps are fixed; the air side stays as it is. Prints a line whenever it gets better.</remarks>
internal static class DevelopCar
{
    private const int Tries = 1500;
    private const double Hopeless = 3;                     // half widths of the target beyond which more is no worse
    private const double Moved = 0.3;                      // of the figures in a step

    // start from the first number, in steps of the second, between the third and the fourth
    private static readonly (string Key, string Unit, double From, double Step, double Least, double Most)[] Figures =
    [
        ("idleJet", "", 50, 5, 35, 80), ("idleBleed", "", 130, 10, 80, 200), ("screwTurns", "", 2.5, 0.25, 1, 4), ("mainJet", "", 140, 5, 80, 200),
        ("airCorrector", "", 190, 10, 100, 250), ("floatLevel", " mm", 5, 0.5, 2, 9), ("nozzle", " mm", 3.5, 0.1, 3, 4.5), ("pumpBackBleed", "", 40, 5, 30, 80),
    ];

    private static readonly (double From, double Step, double Least, double Most)[] Holes =
    [
        (0.9, 0.05, 0.5, 1.4), (0.8, 0.1, 0.3, 2), (0.9, 0.05, 0.5, 1.4), (1.7, 0.1, 0.8, 3), (0.9, 0.05, 0.5, 1.4), (2.7, 0.1, 1.5, 4.5), (0.9, 0.05, 0.5, 1.4), (3.9, 0.1, 2.5, 7),
    ];

    private static readonly (double From, double Step, double Least, double Most)[] Rows =
        [(1, 0.1, 0.4, 1.8), (-3, 0.5, -4, 6), (1, 0.1, 0.4, 1.8), (4, 0.5, 0, 14), (1, 0.1, 0.4, 1.8), (12, 0.5, 6, 24), (1, 0.1, 0.4, 1.8), (22, 0.5, 12, 32)];

    private static readonly (double From, double Step, double Least, double Most)[] All = [.. Figures.Select(f => (f.From, f.Step, f.Least, f.Most)), .. Holes, .. Rows];

    /// <summary>Runs it on a sample and prints what to write into the document.</summary>
    internal static int Run(string name)
    {
        var car = Samples.Read(name);
        var weights = new OperatingWeights(car).All;
        var draw = new Draw(1);
        double[] best = [.. All.Select(f => f.From)];
        best[3] = 100 * Math.Round(car.Barrels[0].Figures.Si("barrel.mainJet") * 1e3, 2);
        var survey = MixtureSurvey.Run(car);
        var least = double.MaxValue;
        for (var n = 0; n < Tries; n++)
        {
            var tried = n == 0 ? best : Stepped(best, draw, n < Tries / 2 ? 2 : 1);
            if (CarDocument.Change(car, Texts(tried)).Car is not { } changed)
            {
                continue;
            }

            var (cost, part) = Judge(survey.Trial(changed).Map, weights);
            if (cost < least)
            {
                (best, least) = (tried, cost);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{n,4}: {cost:F4}, {part:P1} in target: {string.Join(", ", Texts(best).Select(t => $"{t.Key} {t.Value}"))}"));
            }
        }

        return 0;
    }

    private static double[] Stepped(double[] from, Draw draw, double reach) => [.. from.Select((x, k) =>
        draw.Chance(Moved) ? Math.Clamp(Math.Round(x + All[k].Step * Math.Round(reach * draw.Normal()), 2), All[k].Least, All[k].Most) : x)];

    private static List<KeyValuePair<string, string>> Texts(double[] figures)
    {
        List<KeyValuePair<string, string>> texts = [.. Figures.Select((f, k) => KeyValuePair.Create("barrel." + f.Key, figures[k].ToString(CultureInfo.InvariantCulture) + f.Unit))];
        var holes = Pairs(figures[Figures.Length..(Figures.Length + Holes.Length)]).Select(h => string.Create(CultureInfo.InvariantCulture, $"{h.Bore} mm at {h.At} mm"));
        var rows = Pairs(figures[(Figures.Length + Holes.Length)..]).Select(r => string.Create(CultureInfo.InvariantCulture, $"2 x {r.Bore} mm at {r.At} mm"));
        texts.Add(KeyValuePair.Create("barrel.progressionHoles", string.Join("; ", holes)));
        texts.Add(KeyValuePair.Create("barrel.emulsionHoles", string.Join("; ", rows)));
        return texts;
    }

    private static IEnumerable<(double Bore, double At)> Pairs(double[] figures) =>
        Enumerable.Range(0, figures.Length / 2).Select(n => (Bore: figures[2 * n], At: figures[2 * n + 1])).OrderBy(h => h.At);

    private static (double Cost, double Part) Judge(MixtureMap map, IReadOnlyList<double> weights)
    {
        var (cost, part) = (0.0, 0.0);
        for (var p = 0; p < weights.Count; p++)
        {
            var (i, j) = (p / map.Grid.ThrottleDegrees.Count, p % map.Grid.ThrottleDegrees.Count);
            foreach (var barrel in weights[p] > 0 ? map.Barrels : [])
            {
                var (lambda, band) = (barrel.Points[i, j].Lambda, MixtureTargets.At(map.Grid.ThrottleDegrees[j]));
                var off = lambda > 0 ? Math.Abs(Math.Log(lambda / Math.Sqrt(band.Richest * band.Leanest))) / (0.5 * Math.Log(band.Leanest / band.Richest)) : Hopeless;
                cost += weights[p] / map.Barrels.Count * Math.Pow(Math.Min(Hopeless, off), 2);
                part += off <= 1 ? weights[p] / map.Barrels.Count : 0;
            }
        }

        return (cost, part);
    }
}
