using Tickover.Physics.Estimation;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>A map of predictions in the making: λ, and how it changes with each unknown, on the fine grid.</summary>
internal sealed class PredictionWork
{
    private const double DifferencePart = 0.25;          // of the prior's deviation
    private const double SensorOwn = 0.006;               // a sensor's own ±0.01 of λ, common practice: no number of readings takes it away

    internal PredictionWork(RunModel model, IReadOnlyList<FittedUnknown> unknowns, CancellationToken cancellation)
    {
        Fine = MixtureSurvey.DefaultGrid(model.Car);
        var values = unknowns.Select(u => u.Value).ToArray();
        Places = [.. Points().Select(p => FieldPlace.Of(model.Car, p.Rpm, p.Degrees))];
        LogLambda = Read(model, values, cancellation);
        Jacobian = new double[LogLambda.Length, values.Length];
        for (var u = 0; u < CalibrationUnknowns.OfTheCar.Count; u++)
        {
            var step = DifferencePart * unknowns[u].Unknown.PriorDeviation;
            var moved = Read(model, [.. values.Select((v, i) => i == u ? v + step : v)], cancellation);
            for (var p = 0; p < moved.Length; p++)
            {
                Jacobian[p, u] = (moved[p] - LogLambda[p]) / step;
            }
        }
    }

    /// <summary>Maps of several cars with what readings add, and their common covariance.</summary>
    internal static JointPrediction Together(
        IReadOnlyList<Car> cars, IReadOnlyList<FittedUnknown> unknowns, Posterior posterior, SurveyAir air, CancellationToken cancellation)
    {
        var maps = cars.Select(c => new PredictionWork(new RunModel(c, CalibrationGrid.Of(c), air, cancellation), unknowns, cancellation)).ToList();
        var size = maps[0].LogLambda.Length;
        var jacobian = new double[size * maps.Count, unknowns.Count];
        for (var m = 0; m < maps.Count; m++)
        {
            Array.Copy(maps[m].Jacobian, 0, jacobian, m * size * unknowns.Count, size * unknowns.Count);
        }

        var prediction = posterior.Predict([.. maps.SelectMany(m => m.Places)], jacobian);
        return new JointPrediction([.. maps.SelectMany(m => m.LogLambda).Zip(prediction.Correction, (l, c) => l + c)], WithSensor(prediction.Covariance));
    }

    // all readings of a sensor are off alike, so the whole map is
    private static double[,] WithSensor(double[,] covariance)
    {
        for (var p = 0; p < covariance.GetLength(0); p++)
        {
            for (var q = 0; q < covariance.GetLength(1); q++)
            {
                covariance[p, q] += SensorOwn * SensorOwn;
            }
        }

        return covariance;
    }

    internal SurveyGrid Fine { get; }

    internal List<double[]> Places { get; }

    internal double[] LogLambda { get; }

    internal double[,] Jacobian { get; }

    private IEnumerable<(double Rpm, double Degrees)> Points() => Fine.SpeedsRpm.SelectMany(_ => Fine.ThrottleDegrees, (n, t) => (n, t));

    // A prediction is made for the true opening, so the zero of the throttle reading does not enter.
    private double[] Read(RunModel model, double[] values, CancellationToken cancellation)
    {
        var map = model.Equivalence(values, cancellation);
        return [.. Points().Select(p => MapReading.LogLambda(map, model.Grid, 0, p.Rpm, p.Degrees))];
    }
}
