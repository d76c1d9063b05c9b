using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Gauges;

/// <summary>The outcome of reading a gauge document: what it describes, or everything that is wrong with it at once.</summary>
/// <param name="Story">Tanks, gauge and road; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a story.</param>
public sealed record GaugeReadingResult(GaugeStory? Story, IReadOnlyList<Fault> Faults);
