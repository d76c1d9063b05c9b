namespace Tickover.Workshop.Visits;

/// <summary>What was done between two rounds.</summary>
public enum ScrewTurnKind
{
    /// <summary>An adjuster was turned.</summary>
    Turned,

    /// <summary>The rods between carburettors were taken off.</summary>
    RodsOff,

    /// <summary>The rods were put back as they were.</summary>
    RodsOn,

    /// <summary>A rod was offered to its ball, or a stop looked at.</summary>
    LookedAt,

    /// <summary>A fault was looked for.</summary>
    CheckedFor,
}
