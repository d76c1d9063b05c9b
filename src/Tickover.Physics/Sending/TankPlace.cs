namespace Tickover.Physics.Sending;

/// <summary>A place in one of two tanks.</summary>
/// <param name="Side">Which tank.</param>
/// <param name="AheadMetres">Ahead of the tank's middle, m.</param>
/// <param name="LeftMetres">Left of the tank's middle, m.</param>
/// <param name="HeightMetres">Above the tank's floor, m.</param>
public readonly record struct TankPlace(TankSide Side, double AheadMetres, double LeftMetres, double HeightMetres);
