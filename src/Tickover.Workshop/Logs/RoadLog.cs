namespace Tickover.Workshop.Logs;

/// <summary>A log of the road or the rolling road as cleaned channels on one clock, in SI but for speeds in rpm.</summary>
/// <remarks>All lists are as long as <see cref="Seconds"/>. A missing value is NaN. Immutable by contract: nobody writes to the arrays behind it.</remarks>
public sealed record RoadLog
{
    /// <summary>What it is called, such as the file's name.</summary>
    public required string Name { get; init; }

    /// <summary>Time from the first sample, s, rising.</summary>
    public required IReadOnlyList<double> Seconds { get; init; }

    /// <summary>Engine speed, rpm.</summary>
    public required IReadOnlyList<float> SpeedRpm { get; init; }

    /// <summary>Throttle, in the scale of <see cref="ThrottleScale"/>; null where the log has none.</summary>
    public IReadOnlyList<float>? Throttle { get; init; }

    /// <summary>What the throttle's figures mean.</summary>
    public ThrottleScale ThrottleScale { get; init; }

    /// <summary>Absolute pressure behind the plates, Pa; null where the log has none.</summary>
    public IReadOnlyList<float>? ManifoldPascals { get; init; }

    /// <summary>The λ sensors.</summary>
    public required IReadOnlyList<LambdaChannel> Lambdas { get; init; }

    /// <summary>Coolant temperature, K; null where the log has none.</summary>
    public IReadOnlyList<float>? CoolantKelvins { get; init; }

    /// <summary>Oil temperature, K; null where the log has none.</summary>
    public IReadOnlyList<float>? OilKelvins { get; init; }

    /// <summary>Temperature of the air drawn in, K; null where the log has none.</summary>
    public IReadOnlyList<float>? AirKelvins { get; init; }

    /// <summary>Pressure of the fuel over the atmosphere, Pa; null where the log has none.</summary>
    public IReadOnlyList<float>? FuelPressurePascals { get; init; }

    /// <summary>Road speed, m/s; null where the log has none.</summary>
    public IReadOnlyList<float>? RoadMetresPerSecond { get; init; }

    /// <summary>What speaks against the log as a whole, in plain words.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Number of samples.</summary>
    public int Count => Seconds.Count;
}
