using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>A drive with the log already brought down to points: what a careful reader makes of it, with the errors that stay.</summary>
/// <remarks>Noise, delay and drift as the trade reference has them in section 6; the rest assumed, docs/studies.md.</remarks>
internal static class RoadRun
{
    private const int Stretches = 36;
    private const int Pulls = 6;
    private const int Rows = 40;                          // averaged in a stretch
    private const double RowsAlike = 8;                   // so many rows are one reading: exhaust and sensor are slow
    private const double SensorNoise = 0.015;
    private const double IdleNoise = 2;                   // times as much
    private const double Drift = 0.008;                   // over the run, either way
    private const double DelayLeft = 0.15;                // s that the transport delay is out by
    private const double PullRate = 400;                  // rpm/s
    private const double SensorShare = 0.012;
    private static readonly (double Rich, double Lean) Range = (0.68, 1.36);

    /// <summary>Drives the car as it is now.</summary>
    /// <param name="car">The car.</param>
    /// <param name="fitted">It as described, with the jets fitted now.</param>
    /// <param name="number">Which run: another drive each time.</param>
    internal static IReadOnlyList<MixturePoint> Drive(VirtualCar car, Car fitted, int number)
    {
        var (draw, truth) = (new Draw(unchecked(car.Seed * 31 + number)), car.Truth(fitted));
        var drift = draw.Within(Drift);
        var points = new List<MixturePoint>();
        for (var k = 0; k < Stretches + Pulls; k++)
        {
            var (rpm, degrees) = k < Stretches ? Steady(car, truth.Grid, draw) : Pull(car, truth.Grid, draw, k - Stretches);
            var behind = k < Stretches ? 0 : PullRate * DelayLeft * draw.Normal();
            for (var bank = 1; bank <= car.Banks; bank++)
            {
                var real = truth.Lambda(bank, rpm - behind, degrees);
                var noise = SensorNoise * (degrees < 4 ? IdleNoise : 1) / Math.Sqrt(Rows / RowsAlike);
                var read = real * Math.Exp(car.Traits.SensorBias[bank - 1] + drift * (2.0 * k / (Stretches + Pulls) - 1) + noise * draw.Normal());
                if (read > Range.Rich && read < Range.Lean)
                {
                    points.Add(Point(bank, rpm + 8 * draw.Normal(), degrees - car.Traits.ThrottleZero + 0.1 * draw.Normal(), (read, noise)));
                }
            }
        }

        return points;
    }

    // where the car is driven, anywhere within the cell, so that no two drives read the same places
    private static (double Rpm, double Degrees) Steady(VirtualCar car, SurveyGrid grid, Draw draw)
    {
        var cell = draw.ByWeight(car.Weights.All);
        return (Near(grid.SpeedsRpm, cell / grid.ThrottleDegrees.Count, draw), Near(grid.ThrottleDegrees, cell % grid.ThrottleDegrees.Count, draw));
    }

    private static (double Rpm, double Degrees) Pull(VirtualCar car, SurveyGrid grid, Draw draw, int number)
    {
        var peak = car.Sample.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI);
        return (peak * (0.35 + 0.6 * number / (Pulls - 1)) * Math.Exp(0.03 * draw.Normal()), grid.ThrottleDegrees[^1] - draw.Between(0, 3));
    }

    private static double Near(IReadOnlyList<double> values, int index, Draw draw)
    {
        var low = index == 0 ? values[0] : 0.5 * (values[index - 1] + values[index]);
        var high = index == values.Count - 1 ? values[^1] : 0.5 * (values[index] + values[index + 1]);
        return draw.Between(low, high);
    }

    private static MixturePoint Point(int bank, double rpm, double degrees, (double Lambda, double Noise) read) => new()
    {
        Bank = bank,
        Regime = degrees switch { < 4 => Regime.Idle, < 15 => Regime.Progression, < 20 => Regime.Changeover, < 48 => Regime.Cruise, _ => Regime.FullLoad },
        SpeedRpm = rpm,
        ThrottleDegrees = Math.Max(0, degrees),
        Lambda = read.Lambda,
        LambdaSigma = read.Lambda * Math.Sqrt(read.Noise * read.Noise + SensorShare * SensorShare),
        Count = Rows,
    };
}
