namespace Tickover.Workshop.Walls;

/// <summary>A point on a wall, seen square on.</summary>
/// <param name="Right">To the right of the corner measured from, mm.</param>
/// <param name="Up">Up from it, mm.</param>
public readonly record struct WallPoint(double Right, double Up);
