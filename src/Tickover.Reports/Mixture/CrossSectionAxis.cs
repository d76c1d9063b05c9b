namespace Tickover.Reports.Mixture;

/// <summary>Along which axis a map is cut.</summary>
public enum CrossSectionAxis
{
    /// <summary>Over engine speed, at one opening.</summary>
    Speed,

    /// <summary>Over throttle opening, at one speed.</summary>
    Opening,
}
