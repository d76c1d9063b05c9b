namespace Tickover.Physics.Tanks;

/// <summary>Which way the axis of a round tank runs.</summary>
public enum CylinderLie
{
    /// <summary>Across the car.</summary>
    Across,

    /// <summary>Along the car.</summary>
    Along,

    /// <summary>Upright.</summary>
    Standing,
}
