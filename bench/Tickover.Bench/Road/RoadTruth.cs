using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>What a car really does, as far as a log can see: λ of each bank and the pressure behind the plates, over speed and opening.</summary>
/// <remarks>A study whose truth differs in structure gives its own functions.</remarks>
internal sealed record RoadTruth
{
    /// <summary>λ of the exhaust of a bank, from 1, at rpm and degrees.</summary>
    public required Func<int, double, double, double> Lambda { get; init; }

    /// <summary>Absolute pressure behind the plates, Pa, at rpm and degrees.</summary>
    public required Func<double, double, double> ManifoldPascals { get; init; }

    /// <summary>Air through the engine, kg/s, at rpm and degrees.</summary>
    public required Func<double, double, double> AirKilogramsPerSecond { get; init; }

    /// <summary>Number of banks.</summary>
    public required int Banks { get; init; }

    /// <summary>Wide open, degrees from seated.</summary>
    public required double WideDegrees { get; init; }

    /// <summary>Speed of peak power, rpm.</summary>
    public required double PeakRpm { get; init; }

    /// <summary>The truth of a car as the model has it.</summary>
    /// <param name="car">The car, with the figures that are true of it.</param>
    /// <returns>The truth.</returns>
    public static RoadTruth Of(Car car)
    {
        var map = MixtureSurvey.Run(car).Map;
        var banks = car.Banks.Max();
        var (air, fuel, pressure) = (new Surface[banks + 1], new Surface[banks + 1], Sum(car, map, (_, p) => p.ManifoldPressurePascals / car.Barrels.Count));
        for (var b = 0; b <= banks; b++)
        {
            var bank = b;
            air[b] = Sum(car, map, (n, p) => Share(car, n, bank) * p.AirKilogramsPerSecond);
            fuel[b] = Sum(car, map, (n, p) => Share(car, n, bank) * p.FuelKilogramsPerSecond);
        }

        return new RoadTruth
        {
            Banks = banks,
            WideDegrees = 90 - car.Barrels.Max(b => b.Figures.Si("barrel.closedAngle")) * 180 / Math.PI,
            PeakRpm = car.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI),
            Lambda = (b, rpm, deg) => air[b].At(rpm, deg) / Math.Max(1e-9, fuel[b].At(rpm, deg)) / map.StoichiometricRatio,
            AirKilogramsPerSecond = air[0].At,
            ManifoldPascals = pressure.At,
        };
    }

    // Part of a barrel's flow that leaves by a bank; bank 0 is all.
    private static double Share(Car car, int barrel, int bank)
    {
        var cylinders = car.Barrels[barrel - 1].Cylinders;
        return bank == 0 ? 1 : (double)cylinders.Count(c => car.Banks[c - 1] == bank) / cylinders.Count;
    }

    private static Surface Sum(Car car, MixtureMap map, Func<int, BarrelPoint, double> part)
    {
        var (speeds, openings) = (map.Grid.SpeedsRpm, map.Grid.ThrottleDegrees);
        var values = new double[speeds.Count, openings.Count];
        foreach (var barrel in car.Barrels)
        {
            var points = map.ForBarrel(barrel.Number).Points;
            for (var i = 0; i < speeds.Count; i++)
            {
                for (var j = 0; j < openings.Count; j++)
                {
                    values[i, j] += part(barrel.Number, points[i, j]);
                }
            }
        }

        return new Surface([.. speeds], [.. openings], values);
    }

    private sealed record Surface(double[] X, double[] Y, double[,] Z)
    {
        public double At(double x, double y)
        {
            var (i, u) = Place(X, x);
            var (j, v) = Place(Y, y);
            return (1 - u) * ((1 - v) * Z[i, j] + v * Z[i, j + 1]) + u * ((1 - v) * Z[i + 1, j] + v * Z[i + 1, j + 1]);
        }

        private static (int Cell, double Part) Place(double[] axis, double at)
        {
            var i = Math.Clamp(Array.FindLastIndex(axis, a => a <= at), 0, axis.Length - 2);
            return (i, Math.Clamp((at - axis[i]) / (axis[i + 1] - axis[i]), 0, 1));
        }
    }
}
