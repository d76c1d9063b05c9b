namespace Tickover.Physics.Sending;

/// <summary>Estimates the fuel in both tanks from a recorded needle, and from accelerations where there are any.</summary>
/// <remarks>
/// An extended Kalman filter on the two volumes, the flow between them, the needle and what is burnt. It knows how bends move fuel and needle,
/// so a swinging needle is no surprise to it; it trusts readings in hard bends less and takes a jump while standing for a refill.
/// </remarks>
public sealed class FuelEstimator
{
    private const double NinetyPerCent = 1.645;
    private const double RefillWatch = 15;           // s
    private const double StandingStill = 0.5;        // m/s²
    private const double RefillError = 0.015;        // m³ in each tank, once a refill is suspected
    private const double BurntWanders = 1.4e-6;      // m³/s in WanderTime
    private const double WanderTime = 600;           // s

    private readonly FuelEstimateSettings _settings;
    private readonly EstimatorModel _model;
    private readonly SettledGauge _table;

    /// <summary>Makes an estimator.</summary>
    /// <param name="pair">The tanks as they are believed to be, with sender and gauge.</param>
    /// <param name="settings">What is taken for granted.</param>
    public FuelEstimator(TwoTanks pair, FuelEstimateSettings settings)
    {
        ArgumentNullException.ThrowIfNull(pair);
        ArgumentNullException.ThrowIfNull(settings);
        (_settings, _model, _table) = (settings, new EstimatorModel(pair, settings), new SettledGauge(pair));
    }

    /// <summary>Estimates along a drive.</summary>
    /// <param name="everySeconds">Time between readings, s.</param>
    /// <param name="needles">The needle, 0 at E, 1 at F.</param>
    /// <param name="ahead">Forward acceleration, m/s²; as many, or none for a needle alone.</param>
    /// <param name="left">Acceleration to the left, m/s².</param>
    /// <returns>As many estimates.</returns>
    public FuelEstimate Run(double everySeconds, IReadOnlyList<double> needles, IReadOnlyList<double> ahead, IReadOnlyList<double> left)
    {
        ArgumentNullException.ThrowIfNull(needles);
        ArgumentNullException.ThrowIfNull(ahead);
        ArgumentNullException.ThrowIfNull(left);
        var filter = Start(needles[0]);
        var (volumes, bands, refills) = (new double[needles.Count], new double[needles.Count], new List<int>());
        double surprise = 0, waited = 0;
        for (var i = 0; i < needles.Count; i++)
        {
            var (ax, ay) = ahead.Count > 0 ? (ahead[i], left[i]) : (0, 0);
            if (i > 0)
            {
                Predict(filter, ax, ay, everySeconds);
            }

            var rough = Math.Sqrt(ax * ax + ay * ay);
            var (innovation, expected) = filter.Read(EstimatorModel.Needle, needles[i], Noise(rough, everySeconds));
            _model.Bound(filter.State);

            // A refill: standing, and the needle above all that could be expected for a while. Smoothed, so that one jolt does not count.
            var fade = Math.Min(1, everySeconds / RefillWatch);
            surprise += fade * ((rough < StandingStill ? innovation / Math.Max(expected, 3 * _settings.NeedleError) : 0) - surprise);
            waited += everySeconds;
            if (surprise > 1 && waited > 2 * RefillWatch)
            {
                filter.Widen(EstimatorModel.LeftVolume, RefillError);
                filter.Widen(EstimatorModel.RightVolume, RefillError);
                refills.Add(i);
                (surprise, waited) = (0, 0);
            }

            volumes[i] = filter.State[EstimatorModel.LeftVolume] + filter.State[EstimatorModel.RightVolume];
            bands[i] = NinetyPerCent * Math.Sqrt(filter.VarianceOfSum(EstimatorModel.LeftVolume, EstimatorModel.RightVolume) + _settings.TableError * _settings.TableError);
        }

        return new FuelEstimate(volumes, bands, refills);
    }

    private SmallKalman Start(double needle)
    {
        var (left, right) = _model.Share(_table.Volume(needle));
        var filter = new SmallKalman([left, right, 0, needle, _settings.Burnt]);
        filter.Widen(EstimatorModel.LeftVolume, _settings.StartError);
        filter.Widen(EstimatorModel.RightVolume, _settings.StartError);
        filter.Widen(EstimatorModel.PipeFlow, 1e-6);
        filter.Widen(EstimatorModel.Needle, 2 * _settings.NeedleError);
        filter.Widen(EstimatorModel.Burnt, _settings.Burnt);
        return filter;
    }

    private void Predict(SmallKalman filter, double ax, double ay, double dt)
    {
        filter.Move(state => _model.Next(state, ax, ay, dt), _model.Scales);
        var crossing = _settings.PipeError * filter.State[EstimatorModel.PipeFlow];
        filter.WidenAgainst(EstimatorModel.LeftVolume, EstimatorModel.RightVolume, crossing * crossing * _settings.ErrorHoldsSeconds * dt);
        filter.Widen(EstimatorModel.Burnt, BurntWanders * Math.Sqrt(dt / WanderTime));
    }

    private double Noise(double rough, double dt)
    {
        var gate = rough / _settings.GateAcceleration;
        var error = _settings.NeedleError * (1 + gate * gate); // sending (24)
        return error * error * Math.Max(1, _settings.ErrorHoldsSeconds / dt);
    }
}
