namespace Tickover.Workshop.Visits;

/// <summary>How keeping an act ended.</summary>
public enum ActEnding
{
    /// <summary>Kept now.</summary>
    Kept,

    /// <summary>Already kept by an earlier sending of the same key.</summary>
    KeptBefore,

    /// <summary>Somebody else changed the same field meanwhile.</summary>
    Clashed,

    /// <summary>Not understood, or against a rule; nothing was kept.</summary>
    Refused,

    /// <summary>There was nothing to do, such as nothing to undo.</summary>
    Nothing,
}
