namespace Tickover.Physics.Sending;

/// <summary>Which of two tanks, seen by the driver.</summary>
public enum TankSide
{
    /// <summary>The left one.</summary>
    Left,

    /// <summary>The right one.</summary>
    Right,
}
