namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A place or a direction on the car, as it is measured; places in mm.</summary>
/// <param name="Ahead">Forward of the point measured from.</param>
/// <param name="Left">To the left of it, as the driver sits.</param>
/// <param name="Up">Above it.</param>
public readonly record struct Place(double Ahead, double Left, double Up);
