using Tickover.Physics.Estimation;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>Readings lined up with the models of their runs.</summary>
internal sealed class CalibrationWork
{
    private const double DifferencePart = 0.15;           // of the prior's deviation
    private const double DoubtFactor = 2;                 // a doubted reading counts for a quarter
    private readonly List<RunModel> _models;
    private readonly List<double[]> _places = [];
    private readonly Dictionary<MapKey, double[,,]> _maps = [];

    internal CalibrationWork(IReadOnlyList<CalibrationRun> runs, CalibrationSettings settings, SurveyAir air, CancellationToken cancellation)
    {
        var grid = CalibrationGrid.Of(runs[0].Car);
        _models = [.. runs.Select(r => new RunModel(r.Car, grid, air, cancellation))];
        Unknowns = CalibrationUnknowns.WithBanks(runs[0].Car.Banks.Max());
        var points = new List<FittedPoint>();
        for (var r = 0; r < runs.Count; r++)
        {
            points.AddRange(Placed(runs[r], r));
        }

        Points = points;
        Noise = [.. points.Select(p => Math.Max(settings.LeastNoise, p.Point.LambdaSigma / p.Point.Lambda) * (p.Point.Doubts.Count > 0 ? DoubtFactor : 1))];
        _places.AddRange(points.Select(p => FieldPlace.Of(runs[p.Run].Car, p.Point.SpeedRpm, p.ThrottleDegrees)));
        Settings = new LeastSquaresSettings
        {
            MaximumSteps = 8,
            CostTolerance = 1e-3,
            ParameterTolerance = 0.02,
            Central = false,
            DifferenceStep = DifferencePart,
            Scale = [.. Unknowns.Select(u => u.PriorDeviation)],
        };
    }

    internal IReadOnlyList<CalibrationUnknown> Unknowns { get; }

    internal IReadOnlyList<FittedPoint> Points { get; }

    internal IReadOnlyList<double> Noise { get; }

    /// <summary>Readings left aside because no opening is known for them.</summary>
    internal int WithoutOpening { get; private set; }

    /// <summary>Maps computed so far.</summary>
    internal int Computed { get; private set; }

    internal LeastSquaresSettings Settings { get; }

    internal ResidualField Field(double deviation, IReadOnlyList<double> noise) => new(_places, FieldPlace.Lengths, deviation, noise);

    /// <summary>Logarithm of λ predicted for each reading.</summary>
    internal double[] Predicted(IReadOnlyList<double> values, CancellationToken cancellation)
    {
        var trims = new CircuitTrims(values);
        var predicted = new double[Points.Count];
        for (var r = 0; r < _models.Count; r++)
        {
            var map = Map(r, values, cancellation);
            for (var i = 0; i < Points.Count; i++)
            {
                if (Points[i].Run == r)
                {
                    var opening = Math.Max(0, Points[i].ThrottleDegrees + trims.PlateZeroDegrees);
                    predicted[i] = MapReading.LogLambda(map, _models[r].Grid, Points[i].Point.Bank ?? 0, Points[i].Point.SpeedRpm, opening) + trims.Bank(Points[i].Point.Bank);
                }
            }
        }

        return predicted;
    }

    // Differences come back to the same values again and again, and the throttle's zero and the banks leave the map alone.
    private double[,,] Map(int run, IReadOnlyList<double> values, CancellationToken cancellation)
    {
        var key = new MapKey(run, values);
        if (!_maps.TryGetValue(key, out var map))
        {
            _maps.Add(key, map = _models[run].Equivalence(values, cancellation));
            Computed++;
        }

        return map;
    }

    /// <summary>Prediction less reading, of the logarithm of λ.</summary>
    internal double[] Errors(IReadOnlyList<double> values, CancellationToken cancellation)
    {
        var predicted = Predicted(values, cancellation);
        for (var i = 0; i < predicted.Length; i++)
        {
            predicted[i] -= Math.Log(Points[i].Point.Lambda);
        }

        return predicted;
    }

    /// <summary>Rows of a least-squares problem: readings, then priors.</summary>
    internal double[] Rows(IReadOnlyList<double> values, IEnumerable<double> weighted) =>
        [.. weighted, .. values.Select((v, i) => v / Unknowns[i].PriorDeviation)];

    /// <summary>Prediction of each reading, and how it changes with each unknown.</summary>
    internal (double[] Predicted, double[,] Jacobian) Linear(IReadOnlyList<double> values)
    {
        var predicted = Predicted(values, CancellationToken.None);
        var jacobian = new double[predicted.Length, values.Count];
        for (var u = 0; u < values.Count; u++)
        {
            var step = DifferencePart * Unknowns[u].PriorDeviation;
            var moved = Predicted([.. values.Select((v, i) => i == u ? v + step : v)], CancellationToken.None);
            for (var p = 0; p < moved.Length; p++)
            {
                jacobian[p, u] = (moved[p] - predicted[p]) / step;
            }
        }

        return (predicted, jacobian);
    }

    /// <summary>Readings that fall together when left out: those of one regime within a fifth of speed.</summary>
    internal int[] Groups() => [.. Points.Select(p => (int)p.Point.Regime * 100 + (int)Math.Floor(Math.Log(p.Point.SpeedRpm) / 0.2))];

    private IEnumerable<FittedPoint> Placed(CalibrationRun run, int number)
    {
        double[,]? pressure = null;
        foreach (var point in run.Points.Where(p => p.Regime is not (Regime.TipIn or Regime.Overrun)))
        {
            var opening = point.ThrottleDegrees;
            if (opening is null && point.ManifoldPascals is { } pascals)
            {
                pressure ??= _models[number].ManifoldPressure();
                opening = MapReading.Opening(pressure, _models[number].Grid, point.SpeedRpm, pascals);
            }

            if (opening is not { } degrees)
            {
                WithoutOpening++;
                continue;
            }

            yield return new FittedPoint
            {
                Run = number,
                Point = point,
                ThrottleDegrees = degrees,
                ExpectedLambda = 0,
                FittedLambda = 0,
                Weight = 1,
                LeftOutError = 0,
                LeftOutDeviation = 0,
            };
        }
    }
}
