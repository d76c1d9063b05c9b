namespace Tickover.Workshop.Gauges.Traces;

/// <summary>What somebody says about a trace that its file does not.</summary>
public sealed record TraceChoices
{
    /// <summary>The unit of the accelerations; none: as the file says.</summary>
    public TraceUnit? Unit { get; init; }

    /// <summary>Whether gaps are bridged by straight lines; otherwise they are asked about.</summary>
    public bool BridgeGaps { get; init; }

    /// <summary>Column that points ahead; none: found by its name.</summary>
    public string? Ahead { get; init; }

    /// <summary>Column that points to the left; none: found by its name.</summary>
    public string? Left { get; init; }
}
