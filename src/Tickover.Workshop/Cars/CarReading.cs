namespace Tickover.Workshop.Cars;

/// <summary>The outcome of reading a document: a car, or everything that is wrong with it at once.</summary>
/// <param name="Car">The car; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a car.</param>
/// <param name="Warnings">What was accepted but is unusual.</param>
public sealed record CarReading(Car? Car, IReadOnlyList<Fault> Faults, IReadOnlyList<Fault> Warnings);
