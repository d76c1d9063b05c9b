using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Gauges;

/// <summary>The outcome of reading a gauge document: tanks and gauge, or everything that is wrong with it at once.</summary>
/// <param name="Setup">Tanks and gauge; null where there are faults.</param>
/// <param name="Faults">All faults.</param>
public sealed record GaugeReading(GaugeSetup? Setup, IReadOnlyList<Fault> Faults);
