namespace Tickover.Reports.Balance;

/// <summary>How one barrel lies against the limit, as a ring shows it.</summary>
public enum RingStanding
{
    /// <summary>Not read in this round.</summary>
    NotRead,

    /// <summary>Within the limit.</summary>
    Within,

    /// <summary>Surely less air than the limit lets.</summary>
    Low,

    /// <summary>Surely more air than the limit lets.</summary>
    High,

    /// <summary>What the reading is good to straddles the limit: read it again before anything is dismantled.</summary>
    CannotTell,
}
