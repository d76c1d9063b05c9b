using Tickover.Physics.Gauges;

namespace Tickover.Workshop.Tanks.Parts;

/// <summary>The gauge as described.</summary>
/// <param name="Family">The family it is made for; null where it is not known.</param>
/// <param name="EmptyLitres">Fuel in the tanks at which it should stand on E; null for 6 l above what the pick-up cannot reach.</param>
/// <param name="FullLitres">Fuel at which it should stand on F; null for brimful.</param>
public sealed record GaugePart(SenderFamily? Family, double? EmptyLitres, double? FullLitres);
