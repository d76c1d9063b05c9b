namespace Tickover.Workshop.Visits.Authorities;

/// <summary>How far an entry was looked up when it was written.</summary>
public enum AuthorityMark
{
    /// <summary>Title and body were seen in the source named. Editions change: read the one in force.</summary>
    Verified,

    /// <summary>From memory; check title and edition before quoting.</summary>
    FromMemory,

    /// <summary>The workshop's own words.</summary>
    OwnWords,
}
