namespace Tickover.Physics.Sending;

/// <summary>What the estimator is told to expect. Defaults are assumptions for a workshop's own recording, each to be changed where better is known.</summary>
public sealed record EstimatorSettings
{
    /// <summary>Factor of a normal distribution for a band of 90 %.</summary>
    public const double NinetyPercent = 1.6449;

    /// <summary>What the engine usually burns, m³/s.</summary>
    public double UsualBurn { get; init; } = 12e-3 / 3600;

    /// <summary>By what share that may be off, one standard deviation.</summary>
    public double BurnShare { get; init; } = 0.4;

    /// <summary>The most an engine of this car can burn, m³/s.</summary>
    public double MostBurn { get; init; } = 60e-3 / 3600;

    /// <summary>Scatter of one reading of the needle on a calm road, of the scale.</summary>
    public double ReadingScatter { get; init; } = 0.008;

    /// <summary>Acceleration beside gravity at which a reading's variance is twice the calm one, m/s².</summary>
    public double GateMetresPerSecondSquared { get; init; } = 2;

    /// <summary>By what share the flow through the pipe may be off for good, one standard deviation; learned on the way.</summary>
    public double FlowOff { get; init; } = 0.08;

    /// <summary>By what share the needle's lag may be off for good; learned on the way.</summary>
    public double LagOff { get; init; } = 0.12;

    /// <summary>How far the accelerometer's zero to the side may be off, m/s²; learned on the way.</summary>
    public double LeanOff { get; init; } = 0.02;

    /// <summary>By what share the flow through the pipe may be off for a while.</summary>
    public double FlowShare { get; init; } = 0.2;

    /// <summary>By what share the needle's speed may be off for a while.</summary>
    public double LagShare { get; init; } = 0.2;

    /// <summary>Time over which such errors keep their sign, s.</summary>
    public double ErrorMemorySeconds { get; init; } = 8;

    /// <summary>What the calibration of gauge against litres is worth, one standard deviation, m³; it widens the band and no filter takes it out.</summary>
    public double CalibrationCubicMetres { get; init; } = 0.12e-3;

    /// <summary>Square of the surprise over its variance beyond which a reading is not taken.</summary>
    public double Surprise { get; init; } = 9;

    /// <summary>Readings not taken in a row after which the tanks are believed to have been filled or the estimate lost.</summary>
    public int LostAfter { get; init; } = 4;
}
