namespace Tickover.Workshop.Linkages;

/// <summary>What can be set on a linkage.</summary>
public enum LinkageAdjusterKind
{
    /// <summary>The length of a rod, by turning its ends.</summary>
    Rod,

    /// <summary>The screw of a coupling.</summary>
    Coupling,

    /// <summary>A lever's place in its clamp.</summary>
    Clamp,
}
