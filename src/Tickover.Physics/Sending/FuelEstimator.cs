namespace Tickover.Physics.Sending;

/// <summary>The fuel really in the tanks from a recorded needle and the car's accelerations. docs/physics/sending.md (27) to (32).</summary>
/// <remarks>
/// A cubature Kalman filter over both volumes, the pipe's flow, the needle and what the engine burns. Fuel goes down as the engine can burn it, and up only
/// where several calm readings in a row say so. Readings count less the harder the car accelerates, and not at all where they surprise.
/// </remarks>
public sealed class FuelEstimator
{
    private const int Needle = FuelState.Needle;
    private const double CalmMetresPerSecondSquared = 1;

    private readonly TwoTanks _tanks;
    private readonly EstimatorSettings _settings;
    private readonly NeedleScale _scale;
    private readonly FuelStep _step;

    /// <summary>An estimator for a pair of tanks as they are believed to be.</summary>
    /// <param name="tanks">The tanks, pipe, sender and gauge.</param>
    /// <param name="settings">What is expected.</param>
    public FuelEstimator(TwoTanks tanks, EstimatorSettings settings)
    {
        (_tanks, _settings) = (tanks, settings);
        _scale = new NeedleScale(tanks);
        _step = new FuelStep(tanks, settings);
    }

    /// <summary>Litres against the needle at rest.</summary>
    public NeedleScale Scale => _scale;

    /// <summary>Estimates along a recording; each uses the readings up to its own time only.</summary>
    /// <param name="readings">The readings, times rising; at least one.</param>
    /// <returns>One estimate a reading.</returns>
    public IReadOnlyList<FuelEstimate> Estimate(IReadOnlyList<GaugeReading> readings)
    {
        var estimates = new FuelEstimate[readings.Count];
        var state = Begin(readings[0]);
        estimates[0] = Told(state, readings[0].Seconds, true);
        var missed = 0;
        for (var k = 1; k < readings.Count; k++)
        {
            var reading = readings[k];
            _step.Forward(state, reading.Road, reading.Seconds - readings[k - 1].Seconds);
            var (surprise, scatter) = Weigh(state, reading);
            var taken = surprise <= _settings.Surprise;
            missed = taken ? 0 : missed + 1;
            if (missed >= _settings.LostAfter && (Sideways(reading.Road) < CalmMetresPerSecondSquared || missed >= 5 * _settings.LostAfter))
            {
                state.Loosen(0.3 * _scale.CapacityCubicMetres);
                (taken, missed) = (true, 0);
            }

            if (taken)
            {
                state.Take(reading.Needle, scatter);
            }

            estimates[k] = Told(state, reading.Seconds, taken);
        }

        return estimates;
    }

    private static double Sideways(RoadSample road) =>
        Math.Sqrt(road.LeftMetresPerSecondSquared * road.LeftMetresPerSecondSquared + road.AheadMetresPerSecondSquared * road.AheadMetresPerSecondSquared);

    private FuelState Begin(GaugeReading first)
    {
        var total = _scale.CubicMetresAt(first.Needle);
        var (left, right) = _tanks.Settled(total);
        var (wide, apart) = (0.1 * _scale.CapacityCubicMetres, 0.02 * _scale.CapacityCubicMetres);
        return new FuelState([left, right, 0, first.Needle, _settings.UsualBurn, 0, 0, 0], wide, apart, 2 * _settings.ReadingScatter, _settings.BurnShare * _settings.UsualBurn, _settings);
    }

    // sending (30), (31)
    private (double Surprise, double Variance) Weigh(FuelState state, GaugeReading reading)
    {
        var hard = Sideways(reading.Road) / _settings.GateMetresPerSecondSquared;
        var variance = _settings.ReadingScatter * _settings.ReadingScatter * (1 + hard * hard);
        var off = reading.Needle - state.Mean[Needle];
        return (off * off / (state.Covariance[Needle, Needle] + variance), variance);
    }

    private FuelEstimate Told(FuelState state, double seconds, bool taken)
    {
        var (total, variance) = state.Total();
        var half = EstimatorSettings.NinetyPercent * Math.Sqrt(variance + _settings.CalibrationCubicMetres * _settings.CalibrationCubicMetres); // sending (32)
        var most = _scale.CapacityCubicMetres;
        return new FuelEstimate(seconds, Math.Clamp(total, 0, most), Math.Clamp(total - half, 0, most), Math.Clamp(total + half, 0, most), taken);
    }
}
