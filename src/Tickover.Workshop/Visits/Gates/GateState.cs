namespace Tickover.Workshop.Visits.Gates;

/// <summary>How a tap stands.</summary>
public enum GateState
{
    /// <summary>A check is missing or counts no longer.</summary>
    Shut,

    /// <summary>Every check is signed and still counts.</summary>
    Open,

    /// <summary>Not every check counts, and somebody opened it for this visit with a reason and a name.</summary>
    Overridden,
}
