namespace Tickover.Physics.Sending;

/// <summary>How the air above the fuel gets in and out.</summary>
public enum TankVents
{
    /// <summary>Each tank breathes freely.</summary>
    Free,

    /// <summary>Both air spaces joined, however they breathe: no difference between them can drive fuel.</summary>
    Shared,

    /// <summary>The left tank's vent is blocked.</summary>
    LeftBlocked,

    /// <summary>The right tank's vent is blocked.</summary>
    RightBlocked,

    /// <summary>Both are blocked, each tank for itself.</summary>
    BothBlocked,
}
