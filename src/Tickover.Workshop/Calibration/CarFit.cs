using Tickover.Physics.Estimation;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>The model fitted to a car's own readings: values with bands, what they rest on, and predictions for any jets.</summary>
/// <remarks>docs/physics/estimation.md and docs/calibration.md. Immutable.</remarks>
public sealed class CarFit
{
    private readonly Posterior _posterior;
    private readonly SurveyAir _air;

    internal CarFit(Posterior posterior, SurveyAir air, CalibrationSettings settings) => (_posterior, _air, Settings) = (posterior, air, settings);

    /// <summary>The runs it rests on.</summary>
    public required IReadOnlyList<CalibrationRun> Runs { get; init; }

    /// <summary>The unknowns with values and deviations, in order.</summary>
    public required IReadOnlyList<FittedUnknown> Unknowns { get; init; }

    /// <summary>Standard deviation of what the model leaves over, as a part of λ.</summary>
    public required double FieldDeviation { get; init; }

    /// <summary>The readings beside the fit.</summary>
    public required IReadOnlyList<FittedPoint> Points { get; init; }

    /// <summary>What these readings cannot tell, and what stands out, in plain sentences.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>How the search ended.</summary>
    public required EstimateEnding Ending { get; init; }

    /// <summary>Times the maps were computed.</summary>
    public required int Evaluations { get; init; }

    /// <summary>How it was done.</summary>
    public CalibrationSettings Settings { get; }

    /// <summary>Root mean square of the errors of readings predicted from the others alone, as a part of λ.</summary>
    public double LeftOutError => Math.Sqrt(Points.Average(p => p.LeftOutError * p.LeftOutError));

    /// <summary>Part of the readings that fell into the 90 % band made without them, 1.</summary>
    public double LeftOutCoverage => Points.Average(p => Math.Abs(p.LeftOutError) <= Normal.Ninety * p.LeftOutDeviation ? 1.0 : 0.0);

    /// <summary>Covariance of the unknowns, [unknown, unknown].</summary>
    /// <returns>A copy.</returns>
    public double[,] Covariance() => _posterior.Covariance();

    /// <summary>The mixture of a car over the whole map, with bands: this car, with any jets.</summary>
    /// <param name="car">The car with the jets to predict for.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The map of all banks together.</returns>
    public PredictedMap Predict(Car car, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        var model = new RunModel(car, CalibrationGrid.Of(car), _air, cancellation);
        var map = new PredictionWork(model, Unknowns, cancellation);
        var prediction = _posterior.Predict(map.Places, map.Jacobian);
        return new PredictedMap
        {
            Car = car,
            Grid = map.Fine,
            LogLambda = [.. map.LogLambda.Zip(prediction.Correction, (l, c) => l + c)],
            Covariance = prediction.Covariance,
        };
    }

    /// <summary>Fuel over air over the stoichiometric part for jets on trial, on the coarse grid, without what the field adds.</summary>
    internal double[,,] Equivalence(Car car, CancellationToken cancellation) =>
        new RunModel(car, CalibrationGrid.Of(car), _air, cancellation).Equivalence([.. Unknowns.Select(u => u.Value)], cancellation);
}
