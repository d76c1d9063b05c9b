using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>Which reading would settle most: docs/physics/estimation.md (12).</summary>
public static class NextReadings
{
    private const double SensorNoise = 0.015;             // of λ, averaged over a held speed; common practice ±0.01 to 0.02
    private const double RichestRead = 0.68;              // what a wideband sensor shows, and an engine runs on: common practice
    private const double LeanestRead = 1.30;
    private const double SpeedApart = 0.15;               // of the logarithm of the speed: nearer, two readings are one
    private const double OpeningApart = 4;                // degrees

    /// <summary>The readings worth most, the best first; no two near each other.</summary>
    /// <param name="fitted">The car with the jets fitted now.</param>
    /// <param name="proposed">The car with the jets it may get, whose map is to be made sure; may be the same.</param>
    /// <param name="forecast">What is known.</param>
    /// <param name="targets">Targets of λ.</param>
    /// <param name="count">How many are wanted.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The readings; each valued by itself.</returns>
    public static IReadOnlyList<NextReading> Of(
        Car fitted, Car proposed, IForecast forecast, JetTargets targets, int count, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        ArgumentNullException.ThrowIfNull(forecast);
        var ground = new JetGround(proposed, forecast, targets, cancellation);
        var cars = ReferenceEquals(fitted, proposed) ? new[] { proposed } : [proposed, fitted];
        var together = forecast.PredictTogether(cars, cancellation);
        var doubt = ground.Cells.Select(q => ground.Weights[q] * Edge(ground, q)).ToArray();
        var open = ground.Cells.Select((q, i) => doubt[i] * together.Covariance[q, q]).Sum();
        var size = ground.Weights.Count;
        var found = new List<NextReading>();
        foreach (var place in Enumerable.Range(0, cars.Length).SelectMany(c => ground.Cells.Select(p => c * size + p))
            .Where(p => Math.Exp(together.LogLambda[p]) is > RichestRead and < LeanestRead))
        {
            var variance = together.Covariance[place, place];
            var taken = ground.Cells.Select((q, i) => doubt[i] * together.Covariance[place, q] * together.Covariance[place, q]).Sum() / (variance + SensorNoise * SensorNoise);
            var point = place % size;
            found.Add(new NextReading
            {
                Car = cars[place / size],
                WithFittedJets = place / size == cars.Length - 1,
                SpeedRpm = ground.Rpm(point),
                ThrottleDegrees = ground.Degrees(point),
                Regime = ground.Targets[point].Regime,
                Expected = (Math.Exp(together.LogLambda[place]), Normal.Ninety * Math.Sqrt(variance)),
                Narrows = open > 0 ? Math.Clamp(taken / open, 0, 1) : 0,
            });
        }

        return Apart(found.OrderByDescending(f => f.Narrows), count);
    }

    // How much being in target turns on the exact λ there: large near an edge of the band, small far inside or far out.
    private static double Edge(JetGround ground, int point)
    {
        var s = Math.Max(1e-3, ground.Now.Deviation(point));
        var (lean, rich) = ((Math.Log(ground.Targets[point].Leanest) - ground.Now.LogLambda[point]) / s, (ground.Now.LogLambda[point] - Math.Log(ground.Targets[point].Richest)) / s);
        return (Normal.Density(lean) + Normal.Density(rich)) / s;
    }

    private static List<NextReading> Apart(IEnumerable<NextReading> ordered, int count)
    {
        var chosen = new List<NextReading>();
        foreach (var reading in ordered)
        {
            if (chosen.Count < count && chosen.TrueForAll(c => Math.Abs(Math.Log(c.SpeedRpm / reading.SpeedRpm)) > SpeedApart || Math.Abs(c.ThrottleDegrees - reading.ThrottleDegrees) > OpeningApart))
            {
                chosen.Add(reading);
            }
        }

        return chosen;
    }
}
