namespace Tickover.Workshop.Calibration;

/// <summary>How a calibration goes about it.</summary>
public sealed record CalibrationSettings
{
    /// <summary>Deviations beyond which a reading counts less, 1.</summary>
    public double HuberLimit { get; init; } = 2.0;

    /// <summary>Least standard deviation of a reading as a part of λ: a sensor's own ±0.01, common practice.</summary>
    public double LeastNoise { get; init; } = 0.01;

    /// <summary>Fewest readings fitted to.</summary>
    public int FewestPoints { get; init; } = 6;

    /// <summary>Fewest different places (speed and opening) among them.</summary>
    public int FewestPlaces { get; init; } = 3;
}
