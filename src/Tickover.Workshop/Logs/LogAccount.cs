namespace Tickover.Workshop.Logs;

/// <summary>What a log comes to: points, and everything that was found on the way.</summary>
public sealed record LogAccount
{
    /// <summary>The points, in order of time.</summary>
    public required IReadOnlyList<MixturePoint> Points { get; init; }

    /// <summary>Stretches in order of time; between them nothing was steady.</summary>
    public required IReadOnlyList<LogStretch> Stretches { get; init; }

    /// <summary>The transport delay taken off.</summary>
    public required LogDelay Delay { get; init; }

    /// <summary>Fast openings, one for each sensor.</summary>
    public required IReadOnlyList<LogTipIn> TipIns { get; init; }

    /// <summary>What the fast openings say of the accelerator pump.</summary>
    public LogPump Pump { get; init; } = new();

    /// <summary>The log over its time, thinned for a picture.</summary>
    public LogTrace Trace { get; init; } = new();

    /// <summary>What speaks against the log as a whole, in plain words.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>Why there is not one point, and what would do; null where there are points.</summary>
    public string? NoPoints { get; init; }

    /// <summary>What made no point, and why.</summary>
    public required IReadOnlyList<LeftOut> Dropped { get; init; }

    /// <summary>Throttle figure with the pedal up, in the log's scale; null where there is no throttle or it is in degrees.</summary>
    public double? ClosedMark { get; init; }

    /// <summary>Throttle figure wide open, in the log's scale; null likewise.</summary>
    public double? WideMark { get; init; }
}
