namespace Tickover.Workshop.Visits.Measures;

/// <summary>How a value lies to its limit.</summary>
public enum Verdict
{
    /// <summary>There is no limit in figures, or no figure.</summary>
    NotJudged,

    /// <summary>Inside the limit, whatever the instrument is good to.</summary>
    Within,

    /// <summary>The instrument's band straddles the limit.</summary>
    CannotBeTold,

    /// <summary>Below the limit.</summary>
    Low,

    /// <summary>Above the limit.</summary>
    High,
}
