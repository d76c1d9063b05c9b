using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Visits;

/// <summary>A road log, come down to its steady points, with the car as it was when it was taken: what a calibration is fitted to.</summary>
public sealed record RoadRun : RecordItem<RoadRun>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>What the run is called, such as the name of the log.</summary>
    public string Name { get; init; } = "";

    /// <summary>The day it was taken.</summary>
    public DateOnly On { get; init; }

    /// <summary>The car document that held then: its jets are part of what was measured.</summary>
    public string Document { get; init; } = "";

    /// <summary>The points.</summary>
    public IReadOnlyList<MixturePoint> Points { get; init; } = [];

    /// <summary>How the log was read, in plain words: rows kept, rows left out and why, delay.</summary>
    public string Told { get; init; } = "";

    /// <summary>What was taken for what, and the trace; null for runs kept before that was kept.</summary>
    public LogSheet? Sheet { get; init; }

    /// <summary>Whether a fit should leave it out, as one with a wrong car or a bad sensor.</summary>
    public bool LeftOut { get; init; }
}
