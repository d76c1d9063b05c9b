using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Supply;

/// <summary>The outcome of reading a supply document: a supply, or everything that is wrong with it at once.</summary>
/// <param name="Supply">The supply; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a supply.</param>
public sealed record SupplyRead(FuelSupply? Supply, IReadOnlyList<Fault> Faults);
