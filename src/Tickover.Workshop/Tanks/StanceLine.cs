using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks;

/// <summary>What one way of standing does to the fuel.</summary>
/// <param name="Stance">The stance.</param>
/// <param name="UnusableLitres">Fuel in all tanks when the pick-up first draws air, l; null without a pick-up.</param>
/// <param name="NeedleThen">Where the needle settles then, were the car left so; null where nothing tells it.</param>
public sealed record StanceLine(TankStance Stance, double? UnusableLitres, double? NeedleThen);
