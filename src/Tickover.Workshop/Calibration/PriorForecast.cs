using Tickover.Physics.Estimation;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>What can be foretold of a car before any reading: the model with its priors.</summary>
public sealed class PriorForecast : IForecast
{
    private const double FieldDeviation = 0.04;           // what a good one-dimensional model leaves over, assumed
    private const double Unread = 1e6;                    // noise of a reading that says nothing
    private readonly SurveyAir _air = new();

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
        var unknowns = CalibrationUnknowns.WithBanks(cars[0].Banks.Max()).Select(u => new FittedUnknown(u, 0, u.PriorDeviation)).ToArray();
        var field = new ResidualField([FieldPlace.Of(cars[0], 1000, 0)], FieldPlace.Lengths, FieldDeviation, [Unread]);
        var posterior = new Posterior(field, new double[1, unknowns.Length], [0], [.. unknowns.Select(u => u.Unknown.PriorDeviation)]);
        return PredictionWork.Together(cars, unknowns, posterior, _air, cancellation);
    }

    /// <inheritdoc/>
    public double[,,] Equivalence(Car car, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new RunModel(car, CalibrationGrid.Of(car), _air, cancellation)
            .Equivalence(new double[CalibrationUnknowns.OfTheCar.Count + car.Banks.Max()], cancellation);
    }
}
