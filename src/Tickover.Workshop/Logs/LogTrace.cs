namespace Tickover.Workshop.Logs;

/// <summary>A log over its time, thinned to what a picture can show: of every short span the least and the most of each channel.</summary>
public sealed record LogTrace
{
    /// <summary>Time from the first sample, s, rising.</summary>
    public IReadOnlyList<double> Seconds { get; init; } = [];

    /// <summary>Engine speed, rpm; null where there is none.</summary>
    public IReadOnlyList<double?> SpeedRpm { get; init; } = [];

    /// <summary>Opening of the plate from seated, degrees; null where the log has no throttle.</summary>
    public IReadOnlyList<double?>? ThrottleDegrees { get; init; }

    /// <summary>Absolute pressure behind the plate, kPa; null where the log has none.</summary>
    public IReadOnlyList<double?>? ManifoldKilopascals { get; init; }

    /// <summary>The λ sensors.</summary>
    public IReadOnlyList<LogTraceLambda> Lambdas { get; init; } = [];

    /// <summary>Steady stretches, pulls and overruns with their regimes, in order of time; fast openings are in <see cref="TipInSeconds"/>.</summary>
    public IReadOnlyList<LogStretch> Stretches { get; init; } = [];

    /// <summary>When the throttle was opened fast, s.</summary>
    public IReadOnlyList<double> TipInSeconds { get; init; } = [];

    /// <summary>Spans left out whatever the engine did: not running, gaps, cold.</summary>
    public IReadOnlyList<LogSpan> LeftOut { get; init; } = [];
}
