namespace Tickover.Workshop.Visits;

/// <summary>How far a stage has got.</summary>
public enum StageState
{
    /// <summary>Not begun.</summary>
    Ahead,

    /// <summary>Being worked on.</summary>
    Begun,

    /// <summary>Done.</summary>
    Done,

    /// <summary>Not part of this visit.</summary>
    NotNeeded,
}
