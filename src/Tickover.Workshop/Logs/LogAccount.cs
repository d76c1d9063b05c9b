namespace Tickover.Workshop.Logs;

/// <summary>What a log came down to.</summary>
public sealed record LogAccount
{
    /// <summary>Its points.</summary>
    public required IReadOnlyList<MixturePoint> Points { get; init; }

    /// <summary>Its stretches in order of time.</summary>
    public required IReadOnlyList<LogStretch> Stretches { get; init; }

    /// <summary>The delay taken off.</summary>
    public required LogDelay Delay { get; init; }

    /// <summary>Shut and wide open of the throttle channel; null where there is none or it is in degrees.</summary>
    public required (double Shut, double WideOpen)? Throttle { get; init; }

    /// <summary>What speaks against the log, in plain sentences.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>Samples that count for no point, by reason.</summary>
    public required IReadOnlyList<(string Reason, int Samples)> LeftAside { get; init; }
}
