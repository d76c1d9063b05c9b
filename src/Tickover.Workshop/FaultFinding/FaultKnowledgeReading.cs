using Tickover.Workshop.Cars;

namespace Tickover.Workshop.FaultFinding;

/// <summary>The outcome of reading a document of causes, symptoms and tests.</summary>
/// <param name="Knowledge">What it holds, with what it extends; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is knowledge.</param>
public sealed record FaultKnowledgeReading(FaultKnowledge? Knowledge, IReadOnlyList<Fault> Faults);
