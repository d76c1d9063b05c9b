using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Calibration;

/// <summary>Foretells the mixture of a car for any jets: from readings, or from the priors alone.</summary>
public interface IForecast
{
    /// <summary>The mixture over the whole map, with bands.</summary>
    /// <param name="car">The car with the jets to foretell for.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The map of all banks together.</returns>
    PredictedMap Predict(Car car, CancellationToken cancellation);

    /// <summary>Several cars at once, so that what is common to their errors shows.</summary>
    /// <param name="cars">The cars; all with the same speeds and openings.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Expected logarithms of λ, car after car, and their covariance.</returns>
    JointPrediction PredictTogether(IReadOnlyList<Car> cars, CancellationToken cancellation);

    /// <summary>Fuel over air over the stoichiometric part on the coarse grid, [bank, speed, throttle], without what readings add to the model.</summary>
    /// <param name="car">The car with the jets to compute.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The map; bank 0 is all of them.</returns>
    double[,,] Equivalence(Car car, CancellationToken cancellation);
}
