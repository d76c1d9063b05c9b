namespace Tickover.Workshop.Visits;

/// <summary>Under which heading of the account a note stands.</summary>
public enum WorkKind
{
    /// <summary>Work done.</summary>
    Done,

    /// <summary>Changed from how the car left its maker.</summary>
    Changed,

    /// <summary>Not done: advised work.</summary>
    NotDone,

    /// <summary>Could not be measured.</summary>
    NotMeasured,

    /// <summary>How to use or watch the car.</summary>
    Advice,

    /// <summary>For us only; never on the owner's account.</summary>
    Private,
}
