namespace Tickover.Physics.Supply;

/// <summary>How the search for the flows of a line ended.</summary>
public enum SupplyEnding
{
    /// <summary>All pressures meet.</summary>
    Converged = 0,

    /// <summary>The steps ran out first; the residual says how far off it is.</summary>
    MaximumIterations = 1,

    /// <summary>A pressure left the numbers.</summary>
    NotFinite = 2,
}
