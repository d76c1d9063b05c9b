namespace Tickover.Workshop.StripDown.Levels;

/// <summary>How a level stands to the rest of the set.</summary>
public enum LevelFinding
{
    /// <summary>Within the limit as measured.</summary>
    Equal = 0,

    /// <summary>Outside as measured, but the readings are not good enough to be sure.</summary>
    Doubtful = 1,

    /// <summary>Higher than the limit allows.</summary>
    High = 2,

    /// <summary>Lower than the limit allows.</summary>
    Low = 3,

    /// <summary>The float cannot hold the needle shut at the pressure named, or fuel stands above the spill.</summary>
    Floods = 4,
}
