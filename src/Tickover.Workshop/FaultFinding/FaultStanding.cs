namespace Tickover.Workshop.FaultFinding;

/// <summary>How far a case has got.</summary>
public enum FaultStanding
{
    /// <summary>There is a test that tells.</summary>
    Open,

    /// <summary>One cause stands: mend it, then look whether the symptom has gone.</summary>
    Found,

    /// <summary>Nothing more would tell: time for a specialist, or for other symptoms.</summary>
    Exhausted,
}
