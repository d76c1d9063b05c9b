namespace Tickover.Physics.Tanks;

/// <summary>A corner of a sketched outline.</summary>
/// <param name="Across">First coordinate, m: ahead in a side view and in a plan, to the left in a view from behind.</param>
/// <param name="Up">Second coordinate, m: up in a side view and from behind, to the left in a plan.</param>
/// <param name="Radius">Radius the corner is rounded with, m; 0 for a sharp one.</param>
public readonly record struct OutlinePoint(double Across, double Up, double Radius = 0);
