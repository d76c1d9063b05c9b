using Tickover.Reports.Mixture;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Roads;

/// <summary>What the picture of a road log shows.</summary>
public sealed record TraceView
{
    /// <summary>What the log is called.</summary>
    public required string Name { get; init; }

    /// <summary>The trace.</summary>
    public required LogTrace Trace { get; init; }

    /// <summary>The points the steady stretches came to; their means are drawn over the trace.</summary>
    public IReadOnlyList<MixturePoint> Points { get; init; } = [];

    /// <summary>For a wide page or for a phone.</summary>
    public PictureSize Size { get; init; }

    /// <summary>Begins every id inside, so that several pictures live on one page.</summary>
    public required string IdPrefix { get; init; }
}
