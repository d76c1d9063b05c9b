namespace Tickover.Workshop.Visits.Measures;

/// <summary>What a change between two visits may mean.</summary>
public enum DriftMeaning
{
    /// <summary>Nothing beyond what the readings are good to, or beyond what is accepted between places.</summary>
    Held,

    /// <summary>All places moved alike: not their balance but what they share.</summary>
    AllAlike,

    /// <summary>One or some places moved against the others.</summary>
    SomeMoved,
}
