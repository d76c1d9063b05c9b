namespace Tickover.Workshop.Walls;

/// <summary>What was read of a cell.</summary>
public enum CellReadingKind
{
    /// <summary>Nothing.</summary>
    NotRead,

    /// <summary>Its deepest pit was measured.</summary>
    Depth,

    /// <summary>Its deepest pit is shallower than could be measured.</summary>
    Shallower,

    /// <summary>Its deepest pit is deeper than could be measured.</summary>
    Deeper,

    /// <summary>It is through.</summary>
    Hole,
}
