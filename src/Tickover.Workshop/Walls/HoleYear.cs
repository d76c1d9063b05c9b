using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>The chance of a hole anywhere in the wall so many years from now.</summary>
/// <param name="Years">From now.</param>
/// <param name="Chance">The chance.</param>
public readonly record struct HoleYear(double Years, ChanceBand Chance);
