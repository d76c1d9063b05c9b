namespace Tickover.Workshop.FaultFinding;

/// <summary>The test to do next.</summary>
/// <param name="Test">The test.</param>
/// <param name="Bits">What it is expected to tell, bits.</param>
/// <param name="Why">Why this one, in a sentence or two.</param>
public sealed record FaultNext(FaultTest Test, double Bits, string Why);
