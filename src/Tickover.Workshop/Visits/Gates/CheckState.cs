namespace Tickover.Workshop.Visits.Gates;

/// <summary>How a check stands.</summary>
public enum CheckState
{
    /// <summary>Not signed.</summary>
    Missing,

    /// <summary>Signed, and nothing since undoes it.</summary>
    Signed,

    /// <summary>Signed, but something since undoes it.</summary>
    Stale,
}
