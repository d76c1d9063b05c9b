using Tickover.Physics.Estimation;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>The model fitted to a car's own readings: values with bands, what they rest on, and predictions for any jets.</summary>
/// <remarks>docs/physics/estimation.md and docs/calibration.md. Immutable.</remarks>
public sealed class CarFit : IForecast
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

    /// <inheritdoc/>
    public PredictedMap Predict(Car car, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(car);
        var together = PredictTogether([car], cancellation);
        return new PredictedMap { Car = car, Grid = MixtureSurvey.DefaultGrid(car), LogLambda = together.LogLambda, Covariance = together.Covariance };
    }

    /// <inheritdoc/>
    public JointPrediction PredictTogether(IReadOnlyList<Car> cars, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(cars);
        return PredictionWork.Together(cars, Unknowns, _posterior, _air, cancellation);
    }

    /// <inheritdoc/>
    public double[,,] Equivalence(Car car, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new RunModel(car, CalibrationGrid.Of(car), _air, cancellation).Equivalence([.. Unknowns.Select(u => u.Value)], cancellation);
    }
}
