namespace Tickover.Workshop.FaultFinding;

/// <summary>The test to do next.</summary>
/// <param name="Test">The test.</param>
/// <param name="Bits">What it is expected to tell, bits.</param>
/// <param name="Share">That as a part of what is open, 0 to 1.</param>
/// <param name="Why">Why this one, in a sentence or two.</param>
public sealed record FaultNext(FaultTest Test, double Bits, double Share, string Why);
