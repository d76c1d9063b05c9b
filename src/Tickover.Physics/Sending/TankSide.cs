namespace Tickover.Physics.Sending;

/// <summary>Which of two tanks, seen by somebody who sits in the car.</summary>
public enum TankSide
{
    /// <summary>The left one.</summary>
    Left = 0,

    /// <summary>The right one.</summary>
    Right = 1,
}
