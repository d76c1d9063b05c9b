namespace Tickover.Physics.Sending;

/// <summary>A place in a tank, from the middle of its plan.</summary>
/// <param name="LeftMetres">To the left of the tank's middle, m; negative to the right.</param>
/// <param name="AheadMetres">Ahead of the tank's middle, m; negative behind it.</param>
/// <param name="HeightMetres">Above the tank's floor, m.</param>
public readonly record struct TankPlace(double LeftMetres, double AheadMetres, double HeightMetres);
