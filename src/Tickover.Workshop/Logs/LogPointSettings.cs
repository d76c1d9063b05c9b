namespace Tickover.Workshop.Logs;

/// <summary>How a log is made into points.</summary>
public sealed record LogPointSettings
{
    /// <summary>Throttle figure with the pedal up, in the log's own scale; null to find it.</summary>
    public double? ClosedMark { get; init; }

    /// <summary>Throttle figure wide open, in the log's own scale; null to find it.</summary>
    public double? WideMark { get; init; }

    /// <summary>Opening from seated that the stop screw holds at idle, degrees. 1.5 is common practice; a calibration moves it.</summary>
    public double StopDegrees { get; init; } = 1.5;

    /// <summary>What the λ sensor itself may be off by, one standard deviation, 1. ±0.01 to 0.02 steady is common practice (trade reference 6).</summary>
    public double SensorSigma { get; init; } = 0.01;

    /// <summary>Coolant from which the engine counts as warm, K. 70 °C is common practice.</summary>
    public double WarmKelvins { get; init; } = 343.15;

    /// <summary>Shortest steady stretch, s.</summary>
    public double ShortestSeconds { get; init; } = 2;

    /// <summary>Longest stretch made into one point, s; longer ones make several.</summary>
    public double LongestSeconds { get; init; } = 6;

    /// <summary>Transport delay told, s at the flow of a cruise; null to find it.</summary>
    public LogDelay? Delay { get; init; }
}
