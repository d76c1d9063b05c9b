namespace Tickover.Workshop.Logs;

/// <summary>How points are made of a log. The defaults are common practice where no source is named; docs/logs.md.</summary>
public sealed record LogSettings
{
    /// <summary>The throttle channel's figure with the throttle shut; null to find it in the log.</summary>
    public double? Shut { get; init; }

    /// <summary>The throttle channel's figure wide open; null to find it in the log.</summary>
    public double? WideOpen { get; init; }

    /// <summary>Shortest steady stretch that becomes a point, s.</summary>
    public double ShortestSeconds { get; init; } = 3;

    /// <summary>How long after a change the mixture still settles (wall film, sensor), s.</summary>
    public double SettlingSeconds { get; init; } = 1;

    /// <summary>A wideband sensor's own error, as a part of λ: ±0.01 to 0.02 (trade reference 6).</summary>
    public double SensorNoise { get; init; } = 0.012;

    /// <summary>Coolant below this is cold, K: 60 °C.</summary>
    public double ColdKelvins { get; init; } = 333.15;
}
