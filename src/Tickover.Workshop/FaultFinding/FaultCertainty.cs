namespace Tickover.Workshop.FaultFinding;

/// <summary>How sure somebody is of an answer.</summary>
public enum FaultCertainty
{
    /// <summary>Seen plainly.</summary>
    Sure,

    /// <summary>Rather so than not.</summary>
    Leaning,

    /// <summary>Could not be told: says nothing, and the test is not asked again.</summary>
    Unsure,
}
