namespace Tickover.Workshop.Leaks;

/// <summary>What a leak test says.</summary>
public enum LeakVerdictKind
{
    /// <summary>No leak was seen, and one as large as asked for would have been.</summary>
    NoneSeen,

    /// <summary>A leak was seen.</summary>
    Leaks,

    /// <summary>No leak was seen, but one as large as the limit might have been missed.</summary>
    CannotTell,

    /// <summary>The tank gained gas: it is still warming, or a reading is wrong.</summary>
    Gained,
}
