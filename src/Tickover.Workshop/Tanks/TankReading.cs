using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tanks;

/// <summary>The outcome of reading a tank document: tanks, or everything that is wrong with it at once.</summary>
/// <param name="Set">The tanks; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there are tanks.</param>
/// <param name="Warnings">What was accepted but is unusual.</param>
public sealed record TankReading(TankSet? Set, IReadOnlyList<Fault> Faults, IReadOnlyList<Fault> Warnings);
