namespace Tickover.Workshop.Visits;

/// <summary>What an owner said to a question.</summary>
public enum ApprovalAnswer
{
    /// <summary>Nothing yet.</summary>
    Open,

    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,
}
