namespace Tickover.Physics.Tanks;

/// <summary>What keeps corners from being the outline of a tank.</summary>
public enum OutlineFaultKind
{
    /// <summary>Fewer than three corners, or too many.</summary>
    Corners,

    /// <summary>Two corners, one after the other, in one place.</summary>
    SamePlace,

    /// <summary>Two sides cross or touch.</summary>
    Crossing,

    /// <summary>All corners in one line.</summary>
    NoArea,

    /// <summary>Radii at the ends of a side need more than the side is long.</summary>
    Radii,
}
