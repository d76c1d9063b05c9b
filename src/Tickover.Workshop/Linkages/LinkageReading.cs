using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Linkages;

/// <summary>The outcome of reading a linkage document: a linkage, or everything that is wrong with it at once.</summary>
/// <param name="Linkage">The linkage; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a linkage.</param>
/// <param name="Warnings">What was accepted but is unusual.</param>
public sealed record LinkageReading(Linkage? Linkage, IReadOnlyList<Fault> Faults, IReadOnlyList<Fault> Warnings);
