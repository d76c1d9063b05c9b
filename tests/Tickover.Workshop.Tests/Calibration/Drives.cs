using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Tests.Calibration;

/// <summary>Readings as a drive would give them, made from a car whose hidden figures differ from the one described.</summary>
internal static class Drives
{
    internal static Car Sample(string name, params (string Path, string Text)[] changes)
    {
        var car = CarDocument.Read(File.ReadAllText(Path.Combine(Repository.Root, "samples", name + ".car.json"))).Car!;
        return changes.Length == 0 ? car : CarDocument.Change(car, changes.Select(c => KeyValuePair.Create(c.Path, c.Text))).Car!;
    }

    /// <summary>Steady points over idle, progression, cruise and full load, with noise of a wideband sensor.</summary>
    internal static IReadOnlyList<MixturePoint> Of(Car truth, int seed, int count = 60, double noise = 0.01)
    {
        var map = MixtureSurvey.Run(truth).Map;
        var random = new Random(seed);
        var points = new List<MixturePoint>();
        var barrel = map.Barrels[0].Points;
        while (points.Count < count)
        {
            var (i, j) = (random.Next(0, 20), random.Next(0, barrel.GetLength(1)));
            var point = barrel[i, j];
            if (point.Validity.HasFlag(PointValidity.Overrun) || point.Lambda is < 0.68 or > 1.3)
            {
                continue;
            }

            points.Add(new MixturePoint
            {
                Regime = RegimeOf(map.Grid.ThrottleDegrees[j]),
                SpeedRpm = map.Grid.SpeedsRpm[i],
                ThrottleDegrees = map.Grid.ThrottleDegrees[j],
                ManifoldPascals = point.ManifoldPressurePascals,
                Lambda = point.Lambda * Math.Exp(noise * Gauss(random)),
                LambdaSigma = noise,
                Count = 50,
            });
        }

        return points;
    }

    internal static double Gauss(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static Regime RegimeOf(double degrees) => degrees switch
    {
        < 4 => Regime.Idle,
        < 15 => Regime.Progression,
        < 20 => Regime.Changeover,
        < 50 => Regime.Cruise,
        _ => Regime.FullLoad,
    };
}
