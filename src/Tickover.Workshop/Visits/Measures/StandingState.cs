namespace Tickover.Workshop.Visits.Measures;

/// <summary>Whether an instrument's comparison was in date on a day.</summary>
public enum StandingState
{
    /// <summary>Compared before and not yet due.</summary>
    InDate,

    /// <summary>Compared before, but due again.</summary>
    Due,

    /// <summary>Not compared by that day, as far as is known.</summary>
    NeverChecked,
}
