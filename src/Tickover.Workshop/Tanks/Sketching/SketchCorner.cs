namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>A corner of a sketch as it is seen.</summary>
/// <param name="Right">To the right of the tank's own point, mm.</param>
/// <param name="Up">Up from it on the picture, mm.</param>
/// <param name="Radius">Radius the corner is rounded with, mm; 0 for a sharp one.</param>
public readonly record struct SketchCorner(double Right, double Up, double Radius = 0);
