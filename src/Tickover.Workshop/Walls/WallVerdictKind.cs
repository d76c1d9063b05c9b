namespace Tickover.Workshop.Walls;

/// <summary>What to do with a wall.</summary>
public enum WallVerdictKind
{
    /// <summary>Go on, and survey it again by a date.</summary>
    SurveyAgain,

    /// <summary>The readings cannot decide: more are wanted.</summary>
    ReadMore,

    /// <summary>Out of use; repair by a specialist.</summary>
    Specialist,

    /// <summary>Out of use; the sheet as a whole is done.</summary>
    Replace,
}
