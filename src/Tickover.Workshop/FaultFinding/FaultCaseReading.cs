using Tickover.Workshop.Cars;

namespace Tickover.Workshop.FaultFinding;

/// <summary>The outcome of reading a case.</summary>
/// <param name="Case">The case; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a case.</param>
public sealed record FaultCaseReading(FaultCase? Case, IReadOnlyList<Fault> Faults);
