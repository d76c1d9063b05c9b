namespace Tickover.Workshop.Visits;

/// <summary>What became of a finding.</summary>
public enum FindingState
{
    /// <summary>Nothing yet.</summary>
    Open,

    /// <summary>Put right.</summary>
    PutRight,

    /// <summary>Left as it is, by decision.</summary>
    Left,

    /// <summary>The owner did not want it done.</summary>
    Declined,
}
