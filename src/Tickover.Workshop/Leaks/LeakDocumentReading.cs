using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Leaks;

/// <summary>The outcome of reading a leak document: a test, or everything that is wrong with it at once.</summary>
/// <param name="Sheet">The test; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a test.</param>
public sealed record LeakDocumentReading(LeakSheet? Sheet, IReadOnlyList<Fault> Faults);
