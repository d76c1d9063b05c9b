namespace Tickover.Workshop.Gauges.Traces;

/// <summary>Unit of a recorded acceleration.</summary>
public enum TraceUnit
{
    /// <summary>m/s².</summary>
    MetresPerSecondSquared = 0,

    /// <summary>Parts of standard gravity.</summary>
    Gravities = 1,
}
