namespace Tickover.Workshop.Logs;

/// <summary>From the cylinders to the λ shown: a fixed part for sensor and display, and the gas in the pipe over its flow.</summary>
public sealed record LogDelay
{
    /// <summary>Fixed part, s.</summary>
    public required double FixedSeconds { get; init; }

    /// <summary>Mass of gas between valves and sensor, kg; over the flow through the engine, kg/s, it is a time.</summary>
    public required double PipeKilograms { get; init; }

    /// <summary>Delay at the flow of the slowest tenth of the log, s.</summary>
    public double SlowSeconds { get; init; }

    /// <summary>Delay at the flow of the fastest tenth, s.</summary>
    public double FastSeconds { get; init; }

    /// <summary>What the slow delay may be off by, s.</summary>
    public double SlowSigma { get; init; }

    /// <summary>What the fast delay may be off by, s.</summary>
    public double FastSigma { get; init; }

    /// <summary>Part of what λ leaves unexplained by speed and opening that the delay takes away, 0 to 1.</summary>
    public double Gain { get; init; }

    /// <summary>Whether it was found in the log; otherwise it is the usual one.</summary>
    public bool Found { get; init; }

    /// <summary>The delay at a flow.</summary>
    /// <param name="airKilogramsPerSecond">Air through the engine, kg/s.</param>
    /// <returns>Seconds, at most five.</returns>
    public double At(double airKilogramsPerSecond) => Math.Min(5, FixedSeconds + PipeKilograms / Math.Max(1e-4, airKilogramsPerSecond));
}
